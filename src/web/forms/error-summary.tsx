import { useEffect, useRef } from 'react'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { FieldRefusal } from '#core/forms/refusal.ts'
import type { FormWords } from '#core/forms/words.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import styles from './forms.module.css'
import { lineOfRefusal, summed } from './say-refusal.ts'
import { idOf } from './scope.ts'

/** The refusals of one form on the page; of a pair each ear is one. */
export type Refused = {
  readonly prefix: string
  readonly words: FormWords
  readonly side: string | null
  readonly refusals: readonly FieldRefusal[]
  /** The list as it was answered to "save"; a new one takes the focus. */
  readonly asked: readonly FieldRefusal[]
}

/** A longer list than this would push the form itself off a phone: the rest is folded. */
const mostAtOnce = 6

/** What is missing, above the form, each line leading to its field. It takes the focus when the form was refused. */
export function ErrorSummary({ refused }: { readonly refused: readonly Refused[] }) {
  const box = useRef<HTMLElement>(null)
  const count = refused.reduce((sum, { refusals }) => sum + refusals.length, 0)
  const lists = refused.map(({ asked }) => asked)
  useEffect(() => {
    if (lists.some((list) => list.length > 0)) box.current?.focus()
    // biome-ignore lint/correctness/useExhaustiveDependencies: a new list of refusals is a new answer to "save"
  }, lists)
  if (count === 0) return null
  const { title } = formsInEnglish.errors
  const lines = refused.flatMap((one) => summed(one.refusals).map((refusal) => ({ ...one, refusal })))
  const shown = lines.length > mostAtOnce ? lines.slice(0, mostAtOnce - 1) : lines
  const folded = lines.slice(shown.length)
  const heading = `${refused[0]?.prefix ?? ''}-errors`
  return (
    <section className={styles.summary} aria-labelledby={heading} tabIndex={-1} ref={box}>
      <h2 id={heading}>{sayCount(title, count)}</h2>
      <Lines lines={shown} />
      {folded.length > 0 && (
        <details>
          <summary>{sayCount(formsInEnglish.errors.more, folded.length)}</summary>
          <Lines lines={folded} />
        </details>
      )}
    </section>
  )
}

type RefusedLine = Pick<Refused, 'prefix' | 'words' | 'side'> & { readonly refusal: FieldRefusal }

function Lines({ lines }: { readonly lines: readonly RefusedLine[] }) {
  return (
    <ul>
      {lines.map(({ prefix, words, side, refusal }) => (
        <li key={`${prefix}-${refusal.path}`}>
          <a
            href={`#${idOf({ prefix }, refusal.path)}`}
            onClick={(event) => {
              event.preventDefault()
              focusAt(prefix, refusal.path)
            }}
          >
            {lineOfRefusal(refusal, words, side)}
          </a>
        </li>
      ))}
    </ul>
  )
}

/** The control of a path, or the nearest one around it. */
function focusAt(prefix: string, path: string): void {
  const steps = path.split('.')
  for (let length = steps.length; length > 0; length -= 1) {
    const control = document.getElementById(idOf({ prefix }, steps.slice(0, length).join('.')))
    if (!control) continue
    control.focus()
    control.scrollIntoView({ block: 'center' })
    return
  }
}
