import type { OwnFiguresAnswer } from '#actions/evidence/read-own-figures.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { resultsInEnglish as words } from '#content/wording/app-results.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { approvedFor } from '#core/evidence/own/approved.ts'
import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import { countUnits } from '#core/evidence/study.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { Approve } from './approve.tsx'
import { ByReason } from './by-reason.tsx'
import { CountList } from './count-list.tsx'
import { OverTime } from './over-time.tsx'
import { type OwnCounts, rowsOfCounts } from './own-counts.ts'
import { RateChart } from './rate-chart.tsx'
import styles from './results.module.css'
import { TroubleResults } from './trouble-results.tsx'
import { Watched } from './watched.tsx'

export type OperationOf = { readonly species: Species; readonly procedure: ProcedureId }

/** What a link to the part of one operation names. */
export function idOf({ species, procedure }: OperationOf): string {
  return `results-${species}-${procedure}`
}

export function sayOperation({ species, procedure }: OperationOf): string {
  return fill(words.of, { animals: words.animals[species], procedure: namesInEnglish.procedures[procedure] })
}

/** One operation in one species: ears first, then the same by animals and by operations, never added. */
export function OperationResults(props: {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly counts: OwnCounts
  readonly byReason: OwnFiguresAnswer['byReason']
  readonly times: OwnFiguresAnswer['times'][number] | undefined
  readonly today: string
  readonly rules: OwnCountingRules
  readonly file: CaseFile
  readonly again: () => void
}) {
  const { species, procedure, counts, byReason, times, today, rules, file, again } = props
  const of = sayOperation({ species, procedure })
  const approved = approvedFor(file.house, species, procedure)
  const standing = file.house
    .live('figures-approved')
    .filter(({ body }) => body.species === species && body.procedure === procedure)
  const looked = file.house
    .live('figures-left')
    .findLast(({ body }) => body.species === species && body.procedure === procedure)
  const left = looked && (!approved || looked.at > approved.at) ? looked : null
  const id = idOf({ species, procedure })
  const inUnit = (unit: (typeof countUnits)[number]) => counts.filter(({ question }) => question.unit === unit)
  const list = (unit: (typeof countUnits)[number]) => (
    <>
      <CountList
        label={fill(words.list, { of, unit: words.unit[unit].toLowerCase() })}
        counts={inUnit(unit)}
        approved={approved}
        shownFrom={rules.shownFrom.value}
      />
      <RateChart
        caption={fill(words.rates.caption, { of, unit: words.unit[unit].toLowerCase() })}
        rows={rowsOfCounts(inUnit(unit))}
        shownFrom={rules.shownFrom.value}
      />
    </>
  )
  return (
    <section aria-labelledby={id} className={`stack ${styles.operation}`}>
      <h2 id={id}>{of}</h2>
      {approved && (
        <p className="soft">
          {fill(words.approvedBy, {
            person: authorNamed(file, approved.header.author),
            day: sayCalendarDay(dayOf(approved.header.happenedAt)),
          })}
        </p>
      )}
      {left && (
        <p className="soft">
          {fill(words.leftBy, {
            person: authorNamed(file, left.header.author),
            day: sayCalendarDay(dayOf(left.header.happenedAt)),
            because: left.body.because,
          })}
        </p>
      )}
      {standing.length > 1 && <p role="alert">{words.conflicting}</p>}
      {completeness(inUnit('ear')).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className="soft">{words.unitLead.ear}</p>
      {list('ear')}
      {inUnit('ear').some(({ total }) => total > 0) && <p className="soft">{words.rates.how}</p>}
      {countUnits
        .filter((unit) => unit !== 'ear')
        .map((unit) => (
          <details key={unit}>
            <summary>{words.unit[unit]}</summary>
            <p className="soft">{words.unitLead[unit]}</p>
            {list(unit)}
          </details>
        ))}
      <ByReason of={of} groups={byReason} tracts={times?.reasons} shownFrom={rules.shownFrom.value} />
      {times && <OverTime times={times} enough={rules.followedEnough.value} />}
      {times && <Watched watched={times.watched} />}
      <TroubleResults species={species} procedure={procedure} of={of} shownFrom={rules.shownFrom.value} />
      <Approve
        species={species}
        procedure={procedure}
        counts={counts}
        today={today}
        standing={standing}
        shownFrom={rules.shownFrom.value}
        again={again}
        house={file.house}
      />
    </section>
  )
}

/** How much is known comes before what was counted. */
function completeness(ears: OwnCounts): string[] {
  const year = ears.find(({ question }) => question.outcome === 'deep_recurrence')
  if (!year) return []
  const { total, lost, notYetDue } = year
  const due = total + lost
  return [
    fill(words.afterAYear, {
      due: String(due),
      ears: String(due + notYetDue),
      total: String(total),
      lost: String(lost),
    }),
  ]
}
