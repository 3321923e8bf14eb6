import type { OwnTroubleAnswer } from '#actions/evidence/read-own-trouble.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { troubleScreenInEnglish } from '#content/wording/app-trouble.ts'
import { troubleInEnglish as said } from '#content/wording/trouble.ts'
import { knownFromDay } from '#core/complications/rules.ts'
import { bestAndWorst } from '#core/evidence/own/own-rate.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { TroubleQuestion } from '#core/results/trouble-groups.ts'
import { CasesBehind } from './cases-behind.tsx'
import { RateChart } from './rate-chart.tsx'
import styles from './results.module.css'
import { sayCount, sayIntervals } from './say-count.ts'

type Event = OwnTroubleAnswer['ear']['events'][number]

const { results: words } = troubleScreenInEnglish

/** Every kind of trouble with how many of how many, followed and operated, what it was held for, and the cases behind. */
export function TroubleEvents(props: {
  readonly question: TroubleQuestion
  readonly events: readonly Event[]
  readonly of: string
  readonly shownFrom: number
}) {
  const { question, events, of, shownFrom } = props
  const about = { of, unit: words.unit[question.unit] }
  return (
    <>
      <ul className={`bare ${styles.counts}`} aria-label={fill(words.list, about)}>
        {events.map((event) => (
          <li key={event.event} className={styles.count}>
            <strong>{capital(said.events[event.event])}</strong>
            <div>
              <p>{sayCount(countOf(event), shownFrom)}</p>
              <p className="soft">
                {[...sayIntervals(countOf(event), shownFrom), ...sayDenominators(event)].join(' ')}
              </p>
              <CasesBehind ask={{ about: 'trouble', ...question, event: event.event }} groups={words.behind} />
            </div>
            {event.events + event.before > 0 && <p className="soft">{sayClasses(event)}</p>}
          </li>
        ))}
      </ul>
      <RateChart
        caption={fill(words.picture, about)}
        rows={events.map((event) => ({ ...countOf(event), name: capital(said.events[event.event]) }))}
        shownFrom={shownFrom}
      />
    </>
  )
}

/** Of those followed; the others operated are lost. */
function countOf({ events, followed, operated, acrossAnimals }: Event) {
  return { events, total: followed, lost: operated - followed, acrossAnimals }
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

/** What the events are held for; nothing where there is none. */
function sayClasses({ events, classes, before }: Event): string {
  const held = fill(words.classes, {
    complication: String(classes.complication),
    sequela: String(classes.sequela),
    failure: String(classes['failure-to-cure']),
    open: String(classes['not-decided']),
  })
  const left = fill(words.before, { count: String(before) })
  return [...(events > 0 ? [held] : []), ...(before > 0 ? [left] : [])].join(' ')
}
