import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import { ownOutcomeNames } from '#content/wording/own-figures.ts'
import type { ApprovedFigures } from '#core/evidence/own/approved.ts'
import { bestAndWorst, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { ScrollBox } from '../../design/scroll-box.tsx'
import type { OwnCounts } from './own-counts.ts'
import styles from './results.module.css'

type Count = OwnCounts[number]

/** What was counted of every outcome, how much of it is known, and what owners hear. */
export function CountTable(props: {
  readonly caption: string
  readonly counts: OwnCounts
  readonly approved: ApprovedFigures | null
  readonly shownFrom: number
}) {
  const { caption, counts, approved, shownFrom } = props
  const { columns } = words
  return (
    <ScrollBox label={caption}>
      <table className={styles.counts}>
        <caption className="said">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{columns.outcome}</th>
            <th scope="col">{columns.known}</th>
            <th scope="col">{columns.events}</th>
            <th scope="col">{columns.rate}</th>
            <th scope="col">{columns.lost}</th>
            <th scope="col">{columns.waiting}</th>
            <th scope="col">{columns.approved}</th>
          </tr>
        </thead>
        <tbody>
          {counts.map((count) => (
            <tr key={count.question.outcome}>
              <th scope="row">{ownOutcomeNames[count.question.outcome]}</th>
              <td>{sayKnown(count)}</td>
              <td>{count.total === 0 ? '–' : count.events}</td>
              <td>{sayRate(count, shownFrom)}</td>
              <td>{sayBestWorst(count)}</td>
              <td>{sayWaiting(count)}</td>
              <td>{sayApproved(count, approved)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

function sayKnown({ total, lost, died }: Count): string {
  const due = total + lost
  if (due === 0) return words.nobodyDue
  const known = fill(words.knownOf, { total: String(total), due: String(due) })
  if (lost === 0) return known
  const about = { lost: String(lost), died: String(died) }
  return `${known}; ${fill(died > 0 ? words.notKnownDied : words.notKnown, about)}`
}

/** Whole numbers out of 100; an upper end is never rounded down. */
function sayRate(count: Count, shownFrom: number): string {
  const rate = ownRateOf(count, shownFrom)
  switch (rate.kind) {
    case 'nobody':
      return words.rate.nobody
    case 'none-yet':
      return fill(words.rate['none-yet'], { upTo: String(Math.ceil(100 * rate.upTo)) })
    case 'withheld':
      return fill(words.rate.withheld, { from: String(rate.from) })
    case 'shown':
      return fill(words.rate.shown, {
        share: String(Math.round(100 * rate.share)),
        low: String(Math.floor(100 * rate.interval.low)),
        high: String(Math.ceil(100 * rate.interval.high)),
      })
  }
}

function sayBestWorst(count: Count): string {
  const span = bestAndWorst(count)
  if (!span) return '–'
  if (count.lost === 0) return words.nobodyLost
  return fill(words.bestWorst, {
    low: String(Math.round(100 * span.low)),
    high: String(Math.round(100 * span.high)),
  })
}

function sayWaiting({ notYetDue, notYetDueWithEvent }: Count): string {
  if (notYetDue === 0) return '–'
  const about = { count: String(notYetDue), events: String(notYetDueWithEvent) }
  return fill(notYetDueWithEvent > 0 ? words.waitingWith : words.waiting, about)
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
