import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import type { ReasonGroup } from '#core/animal/main-reason.ts'
import type { ApprovedFigures } from '#core/evidence/own/approved.ts'
import { partCounts, type Silent } from '#core/evidence/own/silent-counts.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { CasesBehind } from './cases-behind.tsx'
import type { OwnCounts } from './own-counts.ts'
import styles from './results.module.css'
import { sayCount, sayIntervals, sayKnown, sayWaiting } from './say-count.ts'

type Count = OwnCounts[number]
type About = {
  readonly label: string
  readonly counts: OwnCounts
  /** Ears of one reason only; owners hear nothing by reason. */
  readonly reason?: ReasonGroup
  readonly approved: ApprovedFigures | null
  readonly shownFrom: number
}

/** What was counted of every outcome in sentences, how much of it is known, and what owners hear; one remark said once. */
export function CountList({ label, counts, reason, approved, shownFrom }: About) {
  const { said, silent } = partCounts(counts)
  const allKnown = said.length > 1 && said.every(({ lost, total }) => lost === 0 && total > 0)
  const behind = ({ question }: Count) => (
    <CasesBehind
      ask={{ about: 'rate', ...question, ...(reason !== undefined && { reason }) }}
      groups={words.behindGroups}
    />
  )
  const heard = said.map((count) => approvedOf(count, approved)).filter((one) => one !== null)
  return (
    <div>
      {said.length > 0 && (
        <ul className={`bare ${styles.counts}`} aria-label={label}>
          {said.map((count) => {
            const owners = approvedOf(count, approved)
            return (
              <li key={count.question.outcome} className={styles.count}>
                <strong>{ownOutcomeNames[count.question.outcome]}</strong>
                <div>
                  <p>{sayCount(count, shownFrom)}</p>
                  <p className="soft">
                    {[
                      ...sayIntervals(count, shownFrom),
                      ...(allKnown ? [] : sayKnown(count)),
                      ...sayWaiting(count),
                    ].join(' ')}
                  </p>
                  {behind(count)}
                </div>
                {owners !== null && <p className="soft">{owners}</p>}
              </li>
            )
          })}
        </ul>
      )}
      {silent.map((some) => (
        <div key={some.due} className={styles.silent}>
          <p>{saySilent(some)}</p>
          {behind(some.counts[0])}
        </div>
      ))}
      <div className={`soft ${styles.remarks}`}>
        {allKnown && <p>{words.allComplete}</p>}
        {reason === undefined && heard.length < counts.length && (
          <p>{heard.length === 0 ? words.notApproved : words.notApprovedOthers}</p>
        )}
      </div>
    </div>
  )
}

/** Every outcome is named, so that nobody looks for one in vain. */
function saySilent({ due, counts }: Silent<Count>): string {
  const outcomes = counts.map(({ question }) => lower(ownOutcomeNames[question.outcome])).join('; ')
  return due === 0
    ? fill(words.silent.nobody, { outcomes })
    : fill(words.silent.unknown, { due: String(due), outcomes })
}

/** A name that begins with somebody's name keeps its capital. */
function lower(name: string): string {
  return name.startsWith('Horner') ? name : `${name.charAt(0).toLowerCase()}${name.slice(1)}`
}

/** What owners hear of a count; null where they hear only the studies. */
function approvedOf({ question, events, total, lost }: Count, approved: ApprovedFigures | null): string | null {
  const figure = approved?.body.figures.find(
    ({ outcome, unit }) => outcome === question.outcome && unit === question.unit,
  )
  if (!approved || !figure) return null
  const same = figure.events === events && figure.total === total && figure.lost === lost
  return fill(same ? words.approvedAs : words.approvedOther, {
    events: String(figure.events),
    total: String(figure.total),
    day: sayCalendarDay(approved.body.asOf),
  })
}
