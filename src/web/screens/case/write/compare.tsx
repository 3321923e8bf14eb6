import { useId } from 'react'
import { caseInEnglish, readingInEnglish } from '#content/wording/app-case.ts'
import type { Line } from '#core/journal/fold.ts'
import type { Difference } from '#core/reading/compare.ts'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import { useCaseView } from '../case-view.ts'
import { changesOf, type Now } from './changes-of.ts'
import styles from './write.module.css'

const words = caseInEnglish.write

/** Old and new beside each other while somebody types, before the correction is kept. */
export function Compare(props: { readonly old: Line; readonly now: Now | null; readonly error: string | null }) {
  const { old, now, error } = props
  const view = useCaseView()
  const id = useId()
  const changed = now ? changesOf(old, now, view) : []
  return (
    <section className="stack" aria-labelledby={id}>
      <h2 id={id} className={styles.heading}>
        {words.compare}
      </h2>
      {!now && <p className="soft">{words.notReadable}</p>}
      {now && changed.length === 0 && <p className={error ? styles.error : 'soft'}>{words.noChange}</p>}
      {changed.length > 0 && <Differences changed={changed} heads={[words.old, words.new]} last="new" />}
    </section>
  )
}

/** Answers that differ, one column for each who says them. */
export function Differences(props: {
  readonly changed: readonly Difference[]
  readonly heads: readonly string[]
  /** The last column takes the place of the others; otherwise none is set apart. */
  readonly last?: 'new'
}) {
  const { changed, heads, last } = props
  return (
    <ScrollBox label={words.compare}>
      <table className={styles.compare} data-last={last}>
        <ColumnHeads of={[words.field, ...heads]} />
        <tbody>
          {changed.map(({ at, label, says }) => (
            <tr key={at}>
              <th scope="row">{label}</th>
              {heads.map((head, index) => (
                <td key={head}>{says[index] ?? readingInEnglish.notThere}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}
