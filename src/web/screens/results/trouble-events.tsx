import type { OwnTroubleAnswer } from '#actions/evidence/read-own-trouble.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { resultsInEnglish } from '#content/wording/app-results.ts'
import { troubleScreenInEnglish } from '#content/wording/app-trouble.ts'
import { troubleInEnglish as said } from '#content/wording/trouble.ts'
import { knownFromDay } from '#core/complications/rules.ts'
import { bestAndWorst, ownRateOf } from '#core/evidence/own/own-rate.ts'
import { fill } from '#core/outcome/finding.ts'
import { wilsonInterval } from '#core/stats/proportion-interval.ts'
import { sayCount } from './count-list.tsx'
import styles from './results.module.css'

type Event = OwnTroubleAnswer['ear']['events'][number]

const { results: words } = troubleScreenInEnglish

/** Every kind of trouble with how many of how many, followed and operated, and what it was held for. */
export function TroubleEvents(props: {
  readonly events: readonly Event[]
  readonly label: string
  readonly shownFrom: number
}) {
  const { events, label, shownFrom } = props
  return (
    <ul className={`bare ${styles.counts}`} aria-label={label}>
      {events.map((event) => (
        <li key={event.event} className={styles.count}>
          <strong>{upper(said.events[event.event])}</strong>
          <div>
            <p>{sayCount(countOf(event), shownFrom)}</p>
            <p className="soft">{[...sayWilson(event, shownFrom), ...sayDenominators(event)].join(' ')}</p>
          </div>
          <p className="soft">{sayClasses(event)}</p>
        </li>
      ))}
    </ul>
  )
}

function upper(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}

/** Of those followed; the others operated are lost. */
function countOf({ events, followed, operated }: Event) {
  return { events, total: followed, lost: operated - followed }
}

function sayWilson(event: Event, shownFrom: number): string[] {
  const count = countOf(event)
  const wilson = wilsonInterval(count)
  if (ownRateOf(count, shownFrom).kind !== 'shown' || wilson.kind === 'refusal') return []
  const { low, high } = wilson.answer
  return [fill(resultsInEnglish.wilson, { low: String(Math.floor(100 * low)), high: String(Math.ceil(100 * high)) })]
}

function sayDenominators(event: Event): string[] {
  const count = countOf(event)
  const span = bestAndWorst(count)
  const whole = (share: number) => String(Math.round(100 * share))
  return [
    fill(words.due, { days: String(knownFromDay(event.event, troubleRules)) }),
    fill(words.known, { total: String(event.followed), due: String(event.operated) }),
    ...(span && count.lost > 0 ? [fill(words.span, { low: whole(span.low), high: whole(span.high) })] : []),
    ...(event.early > 0 ? [fill(words.early, { count: String(event.early) })] : []),
  ]
}

function sayClasses({ classes, before }: Event): string {
  return [
    fill(words.classes, {
      complication: String(classes.complication),
      sequela: String(classes.sequela),
      failure: String(classes['failure-to-cure']),
      open: String(classes['not-decided']),
    }),
    ...(before > 0 ? [fill(words.before, { count: String(before) })] : []),
  ].join(' ')
}
