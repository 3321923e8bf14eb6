import { formsInEnglish } from '#content/wording/app-form-words.ts'
import { isRecord, textIn } from '#core/forms/draft.ts'
import { optionWord } from '#core/forms/words.ts'
import { ChoiceFrame, ErrorLine, type Part, useTold } from './field-frame.tsx'
import styles from './forms.module.css'
import { useScope } from './scope.ts'

/** One answer to tap: a native radio or checkbox with its word, as large as a finger. */
export function Option(props: {
  readonly kind: 'radio' | 'checkbox'
  readonly id?: string | undefined
  readonly name?: string
  readonly word: string
  readonly chosen: boolean
  readonly quiet?: boolean
  readonly describedBy?: string | undefined
  onChoose(): void
}) {
  const { kind, id, name, word, chosen, quiet, describedBy, onChoose } = props
  return (
    <label className={quiet ? styles.quietOption : styles.option}>
      <input type={kind} id={id} name={name} checked={chosen} aria-describedby={describedBy} onChange={onChoose} />
      <span>{word}</span>
    </label>
  )
}

/** "None" where it is an answer of its own; it takes every other away. */
export function NoneOption({ part, word }: { readonly part: Part; readonly word: string | undefined }) {
  const { field, path, draft } = part
  const { set } = useScope()
  if (field.blank !== 'none' || !word) return null
  const none = draft === null
  return <Option kind="checkbox" word={word} quiet chosen={none} onChoose={() => set(path, none ? '' : null)} />
}

/** The answers that say that nobody looked stand back a little, so that they are never taken by mistake. */
const standsBack = ['not-assessed', 'not-asked', 'not-reported', 'not-stated']

/** A few answers beside each other, one of them chosen. */
export function ChoicePart(part: Part & { readonly options: readonly string[] }) {
  const { field, path, draft, options } = part
  const { set } = useScope()
  const told = useTold(part)
  const text = textIn(draft)
  const none = field.blank !== 'required' && field.nullable ? told.words.none : undefined
  return (
    <ChoiceFrame field={field} told={told} role="radiogroup">
      <div className={styles.options}>
        {options.map((option, index) => (
          <Option
            key={option}
            kind="radio"
            {...(index === 0 && { id: told.id })}
            name={told.id}
            word={optionWord(told.words, formsInEnglish.options, option) ?? option}
            chosen={text === option}
            quiet={standsBack.includes(option)}
            onChoose={() => set(path, option, field.empties)}
          />
        ))}
        {none && (
          <Option
            kind="radio"
            name={told.id}
            word={none}
            quiet
            chosen={draft === null}
            onChoose={() => set(path, null)}
          />
        )}
      </div>
    </ChoiceFrame>
  )
}

/** Any number of answers; where "none" is an answer it is one of them and takes the others away. */
export function ManyPart(
  part: Part & { readonly options: readonly { readonly id: string; readonly label: string }[] },
) {
  const { field, path, draft, options } = part
  const { set } = useScope()
  const told = useTold(part)
  const chosen = Array.isArray(draft) ? draft.map(textIn) : []
  const known = options.map(({ id }) => id)
  const others = chosen.filter((id) => !known.includes(id)).map((id) => ({ id, label: id }))
  const toggle = (id: string) =>
    set(
      path,
      [...known, ...others.map((other) => other.id)].filter((one) => (one === id) !== chosen.includes(one)),
    )
  const all = [...options, ...others]
  return (
    <ChoiceFrame field={field} told={told}>
      {all.length === 0 && <p className={styles.help}>{formsInEnglish.noneOnRecord}</p>}
      <div className={styles.options}>
        {all.map(({ id, label }, index) => (
          <Option
            key={id}
            kind="checkbox"
            {...(index === 0 && { id: told.id })}
            word={label}
            chosen={chosen.includes(id)}
            onChoose={() => toggle(id)}
          />
        ))}
        <NoneOption part={part} word={told.words.none} />
      </div>
    </ChoiceFrame>
  )
}

/** A list of questions with the same answers: a row each. */
export function RowsPart(part: Part & { readonly rows: readonly string[]; readonly answers: readonly string[] }) {
  const { field, rows } = part
  const told = useTold(part)
  return (
    <ChoiceFrame field={field} told={told}>
      <div className={styles.rows}>
        {rows.map((row) => (
          <Row key={row} {...part} row={row} />
        ))}
      </div>
    </ChoiceFrame>
  )
}

function Row(part: Part & { readonly row: string; readonly answers: readonly string[] }) {
  const { field, path, draft, row, answers } = part
  const scope = useScope()
  const at = `${path}.rows.${row}`
  const told = useTold({ field, path: at })
  const { item, answer } = field.control.kind === 'rows' ? field.control : { item: '', answer: '' }
  const wordOf = (part1: string, option: string) =>
    optionWord(scope.words.fields[`${field.at}.${part1}`], formsInEnglish.options, option) ?? option
  const given = textIn(rowsIn(draft)[row])
  return (
    <div className={styles.row}>
      <div
        className={styles.rowGroup}
        role="radiogroup"
        aria-labelledby={`${told.id}-row`}
        aria-invalid={told.error !== null}
        aria-describedby={told.errorId}
      >
        <span id={`${told.id}-row`} className={styles.rowLabel}>
          {wordOf(item, row)}
        </span>
        <div className={styles.options}>
          {answers.map((option, index) => (
            <Option
              key={option}
              kind="radio"
              {...(index === 0 && { id: told.id })}
              name={told.id}
              word={wordOf(answer, option)}
              chosen={given === option}
              quiet={standsBack.includes(option)}
              onChoose={() => scope.set(at, option)}
            />
          ))}
        </div>
      </div>
      <ErrorLine told={told} />
    </div>
  )
}

function rowsIn(draft: Part['draft']): { readonly [row: string]: Part['draft'] } {
  const rows = isRecord(draft) ? draft.rows : undefined
  return isRecord(rows) ? rows : {}
}
