import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { answer, type Outcome } from '../outcome/outcome.ts'
import { exactInterval } from '../stats/proportion-interval.ts'
import { cumulativeIncidence, type IncidenceCurve, incidenceLimits } from '../stats/survival/cumulative-incidence.ts'
import { kaplanMeier } from '../stats/survival/kaplan-meier.ts'
import {
  endTimesOf,
  type Followed,
  lifeTable,
  lineAt,
  type NobodyFollowed,
  type UnusableTime,
} from '../stats/survival/life-table.ts'
import { restrictedMean } from '../stats/survival/restricted-mean.ts'
import { daysBetween } from '../time/calendar-day.ts'

/** What is known of the share after so many days; `too-few` where too few ears are followed that long. */
export type ShareAt = { readonly months: number; readonly day: number; readonly followed: number } & (
  | { readonly kind: 'too-few' }
  /** While nobody has had it there is no interval, but how high the true share could still be: `upTo`, of those followed. */
  | {
      readonly kind: 'said'
      readonly share: number
      readonly interval: readonly [number, number] | null
      readonly upTo: number | null
      readonly withoutDeaths: number
    }
)

export type TractStep = {
  readonly day: number
  readonly followed: number
  readonly events: number
  readonly died: number
  /** Null where too few are followed: one ear more or less would then move it by more than ten of 100. */
  readonly share: number | null
  readonly interval: readonly [number, number] | null
}

/** Time to the first late swelling, abscess or tract of some ears, with death as an end of its own. */
export type TractTimes = {
  readonly ears: number
  readonly animals: number
  readonly events: number
  readonly died: number
  readonly from: string
  readonly until: string
  readonly at: readonly ShareAt[]
  /** Days without it up to the horizon, on average; null where nobody is followed that long. */
  readonly mean: { readonly months: number; readonly days: number; readonly error: number } | null
  readonly steps: readonly TractStep[]
}

export type TractRules = {
  /** A share is said as long as so many ears are still followed. */
  readonly enough: number
  /** A death counts as an end of its own when somebody knew the ear so many days before it. */
  readonly deathWithinDays: number
}

/** Whole months as days of a year of 365, which is what "twelve months" is due by. */
const horizons = [
  { months: 12, day: 365 },
  { months: 24, day: 730 },
] as const

/**
 * How one ear ended, for a curve: with a tract, with death before one, or last heard of without either. An ear of which
 * nobody has said anything counts as followed for no day. A death that is heard of long after the last look says nothing
 * of the ear in between: the ear leaves with that look, because silence is never "free of it".
 *
 * @example tractEnd(ear, 90) // { time: 431, status: 1 }
 */
export function tractEnd({ on, tractOn, died, followedUntil }: OperatedEar, deathWithinDays: number): Followed {
  const since = (day: string) => Math.max(0, daysBetween(on, day))
  if (tractOn !== null && (died === null || tractOn <= died)) return { time: since(tractOn), status: 1 }
  const seen = followedUntil === null ? 0 : since(followedUntil)
  if (died !== null && since(died) - seen <= deathWithinDays) return { time: since(died), status: 2 }
  return { time: seen, status: 0 }
}

/**
 * The curve of some ears of one species and one operation, and what may be said of it at one and two years.
 *
 * @example tractTimes(ears, { enough: 10, deathWithinDays: 90 })
 */
export function tractTimes(
  ears: readonly OperatedEar[],
  { enough, deathWithinDays }: TractRules,
): Outcome<TractTimes, NobodyFollowed | UnusableTime> {
  const rows = ears.map((ear) => tractEnd(ear, deathWithinDays))
  const made = lifeTable(endTimesOf(rows))
  if (made.kind === 'refusal') return made
  const table = made.answer
  const found = cumulativeIncidence(table)
  const without = kaplanMeier(table)
  const days = ears.map(({ on }) => on).sort()
  const [year] = horizons
  const followedFor = (day: number) => rows.filter(({ time }) => time >= day).length
  const mean = followedFor(year.day) < enough ? null : restrictedMean(without, year.day)
  return answer({
    ears: ears.length,
    animals: new Set(ears.map(({ animal }) => animal)).size,
    events: rows.filter(({ status }) => status === 1).length,
    died: rows.filter(({ status }) => status === 2).length,
    from: days[0] ?? '',
    until: days.at(-1) ?? '',
    at: horizons.map((horizon): ShareAt => {
      const followed = followedFor(horizon.day)
      if (followed < enough) return { ...horizon, followed, kind: 'too-few' }
      const line = lineAt(table, horizon.day)
      const said = shareOn(found, line)
      const none = said.share === 0 ? exactInterval({ events: 0, total: followed }) : null
      return {
        ...horizon,
        followed,
        kind: 'said',
        ...said,
        upTo: none?.kind === 'answer' ? none.answer.high : null,
        withoutDeaths: line < 0 ? 0 : 1 - (without.survival[line] ?? 1),
      }
    }),
    mean: mean?.kind === 'answer' ? { months: year.months, days: mean.answer.mean, error: mean.answer.error } : null,
    steps: Array.from(table.time, (day, line) => {
      const followed = table.atRisk[line] ?? 0
      const counted = { day, followed, events: table.events[line] ?? 0, died: table.competing[line] ?? 0 }
      return followed < enough ? { ...counted, share: null, interval: null } : { ...counted, ...shareOn(found, line) }
    }),
  })
}

function shareOn(
  { event, eventError }: IncidenceCurve,
  line: number,
): { readonly share: number; readonly interval: readonly [number, number] | null } {
  const share = event[line] ?? 0
  const { low, high } = incidenceLimits(share, eventError[line] ?? 0)
  return { share, interval: low === null || high === null ? null : [low, high] }
}
