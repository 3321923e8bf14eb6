import { caseInEnglish } from '#content/wording/app-case.ts'
import { owedScreen } from '#content/wording/app-lists.ts'
import { fits } from '#core/identity/search.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import styles from './choose-case.module.css'

const words = caseInEnglish.refile
export type Row = Lists['cases'][number]

const mostShown = 8

/** Finds another case of this clinic by whatever is known of it; nothing is chosen before somebody chose. */
export function ChooseCase(props: {
  readonly label: string
  readonly find: string
  readonly stream: string | null
  readonly not: string
  readonly error: string | null
  readonly onFind: (text: string) => void
  readonly onChoose: (row: Row) => void
}) {
  const { label, find, stream, not, error, onFind, onChoose } = props
  const reading = useLists()
  return (
    <fieldset className={styles.found}>
      <legend className="said">{label}</legend>
      <TextField
        label={label}
        error={error}
        type="search"
        autoComplete="off"
        spellCheck={false}
        value={find}
        onText={onFind}
      />
      <ReadingView reading={reading}>
        {({ cases }) => {
          const found = cases.filter(
            (row) => row.stream !== not && (row.stream === stream || (find.trim() !== '' && fits(row, find))),
          )
          if (find.trim() !== '' && found.length === 0) return <p role="status">{words.none}</p>
          return found.slice(0, mostShown).map((row) => (
            <label key={row.stream} className={styles.animal}>
              <input type="radio" name="right-animal" checked={row.stream === stream} onChange={() => onChoose(row)} />
              <span>{sayRow(row)}</span>
            </label>
          ))
        }}
      </ReadingView>
    </fieldset>
  )
}

function sayRow({ name, species, ownerName, chip }: Row): string {
  return [name, owedScreen[species === 'cat' ? 'cat' : 'dog'], ownerName, chip].filter((part) => part).join(', ')
}
