import { useEffect, useRef } from 'react'
import { caseInEnglish, readingInEnglish } from '#content/wording/app-case.ts'
import type { Json } from '#core/journal/canonical.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf, KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Difference, differences } from '#core/reading/compare.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { type Moment, sayMoment } from '#core/time/moment.ts'
import { library, rowsOf, useCaseView } from '../case-view.ts'
import styles from './write.module.css'

const words = caseInEnglish.write

/** Old and new beside each other, before the correction is kept. */
export function Compare(props: {
  readonly old: Line
  readonly now: { readonly body: BodyOf<KindName>; readonly subject: Subject; readonly moment: Moment | null }
  readonly reason: string
  readonly keeping: boolean
  readonly onKeep: () => void
  readonly onBack: () => void
}) {
  const { old, now, reason, keeping, onKeep, onBack } = props
  const { file, nameOfEntry } = useCaseView()
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  const header = { ...old.header, subject: now.subject }
  const rows = rowsOf({ header, body: now.body as unknown as Json, known: true, erased: false }, file)
  const about = (subject: Subject) => saySubject(subject, file, library)
  const around: Difference[] = [
    difference(words.about, about(old.header.subject), about(now.subject)),
    difference(words.when, sayMoment(old.header.happenedAt), now.moment ? sayMoment(now.moment) : words.whenNow),
  ].filter(({ says: [before, after] }) => before !== after)
  const changed = [...around, ...differences([rowsOf(old, file), rows], nameOfEntry)]
  return (
    <section className="stack">
      <h2 ref={heading} tabIndex={-1} className={styles.heading}>
        {words.compare}
      </h2>
      {changed.length === 0 ? (
        <p role="status">{words.noChange}</p>
      ) : (
        <Differences changed={changed} heads={[words.old, words.new]} last="new" />
      )}
      <p>{fill(caseInEnglish.entry.reason, { reason })}</p>
      <div className={styles.buttons}>
        <button type="button" data-weight="main" disabled={keeping || changed.length === 0} onClick={onKeep}>
          {words.keepCorrection}
        </button>
        <button type="button" onClick={onBack}>
          {words.backToForm}
        </button>
      </div>
    </section>
  )
}

function difference(label: string, before: string, after: string): Difference {
  return { at: label, label, says: [before, after] }
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
    <div className={styles.scrolls}>
      <table className={styles.compare} data-last={last}>
        <thead>
          <tr>
            <th scope="col">{words.field}</th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
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
    </div>
  )
}
