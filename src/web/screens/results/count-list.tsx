import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import type { ReasonGroup } from '#core/animal/main-reason.ts'
import type { ApprovedFigures } from '#core/evidence/own/approved.ts'
import { bestAndWorst, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Interval, wilsonInterval } from '#core/stats/proportion-interval.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { CasesBehind } from './cases-behind.tsx'
import type { OwnCounts } from './own-counts.ts'
import styles from './results.module.css'

type Count = OwnCounts[number]

/** What was counted of every outcome in sentences, how much of it is known, and what owners hear. */
export function CountList(props: {
  readonly label: string
  readonly counts: OwnCounts
  /** Ears of one reason only; owners hear nothing by reason. */
  readonly reason?: ReasonGroup
  readonly approved: ApprovedFigures | null
  readonly shownFrom: number
}) {
  const { label, counts, reason, approved, shownFrom } = props
  return (
    <ul className={`bare ${styles.counts}`} aria-label={label}>
      {counts.map((count) => (
        <li key={count.question.outcome} className={styles.count}>
          <strong>{ownOutcomeNames[count.question.outcome]}</strong>
          <div>
            <p>{sayCount(count, shownFrom)}</p>
            <p className="soft">
              {[...sayIntervals(count, shownFrom), ...sayKnown(count), ...sayWaiting(count)].join(' ')}
            </p>
            <CasesBehind question={reason === undefined ? count.question : { ...count.question, reason }} />
          </div>
          {reason === undefined && <p className="soft">{sayApproved(count, approved)}</p>}
        </li>
      ))}
    </ul>
  )
}

/** Whole numbers out of 100; an upper end is never rounded down. */
export function sayCount(count: Pick<Count, 'events' | 'total' | 'lost'>, shownFrom: number): string {
  const due = count.total + count.lost
  const rate = ownRateOf(count, shownFrom)
  const about = { total: String(count.total), events: String(count.events), due: String(due) }
  switch (rate.kind) {
    case 'nobody':
      return due === 0 ? words.sentences.nobody : fill(words.sentences.unknown, about)
    case 'none-yet':
      return fill(words.sentences.none, { ...about, upTo: String(Math.ceil(100 * rate.upTo)) })
    case 'withheld':
      return fill(words.sentences.withheld, { ...about, from: String(rate.from) })
    case 'shown':
      return fill(words.sentences.shown, {
        ...about,
        share: String(Math.round(100 * rate.share)),
        low: String(Math.floor(100 * rate.interval.low)),
        high: String(Math.ceil(100 * rate.interval.high)),
      })
  }
}

/** The other intervals of a rate that is shown: by Wilson, and with both ears of an animal tied to each other. */
function sayIntervals(count: Count, shownFrom: number): string[] {
  if (ownRateOf(count, shownFrom).kind !== 'shown') return []
  const wilson = wilsonInterval(count)
  const ends = ({ low, high }: Interval) => ({
    low: String(Math.floor(100 * low)),
    high: String(Math.ceil(100 * high)),
  })
  return [
    ...(wilson.kind === 'answer' ? [fill(words.wilson, ends(wilson.answer))] : []),
    ...(count.acrossAnimals ? [fill(words.acrossAnimals, ends(count.acrossAnimals))] : []),
  ]
}

function sayKnown(count: Count): string[] {
  const span = bestAndWorst(count)
  if (!span || count.total === 0) return []
  const due = String(count.total + count.lost)
  if (count.lost === 0) return [words.complete]
  const ends = { low: String(Math.round(100 * span.low)), high: String(Math.round(100 * span.high)) }
  return [
    fill(words.lost, { total: String(count.total), due, ...ends }),
    ...(count.died > 0 ? [fill(words.lostDied, { died: String(count.died) })] : []),
  ]
}

function sayWaiting({ notYetDue, notYetDueWithEvent }: Count): string[] {
  if (notYetDue === 0) return []
  const about = { count: String(notYetDue), events: String(notYetDueWithEvent) }
  return [fill(notYetDueWithEvent > 0 ? words.waitingWith : words.waiting, about)]
}

function sayApproved({ question, events, total, lost }: Count, approved: ApprovedFigures | null): string {
  const figure = approved?.body.figures.find(
    ({ outcome, unit }) => outcome === question.outcome && unit === question.unit,
  )
  if (!approved || !figure) return words.notApproved
  const same = figure.events === events && figure.total === total && figure.lost === lost
  return fill(same ? words.approvedAs : words.approvedOther, {
    events: String(figure.events),
    total: String(figure.total),
    day: sayCalendarDay(approved.body.asOf),
  })
}
