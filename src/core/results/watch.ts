import type { CountedGroup, OwnQuestion } from '../evidence/own/count-own.ts'
import type { Sourced } from '../evidence/sourced.ts'
import { compareText } from '../journal/compare-text.ts'
import { cusumPath, signalWithin, type Watched } from '../stats/monitoring/cusum.ts'
import { expectedLessObserved } from '../stats/monitoring/expected-less-observed.ts'
import { observedOverExpected } from '../stats/poisson-rate.ts'

/** How results are watched in their order. Content gives the values. */
export type WatchRules = {
  /** The chart looks for odds that are so many times those of the studies. */
  readonly ratio: Sourced<number>
  /** It signals where it reaches this. */
  readonly limit: Sourced<number>
  /** No chart is drawn of fewer known. */
  readonly least: Sourced<number>
  /** Over so many ahead it is said how often it signals falsely, and how often rightly. */
  readonly ahead: Sourced<number>
}

export type WatchPoint = {
  readonly on: string
  readonly event: boolean
  readonly value: number
  readonly signal: boolean
}

export type Together = {
  readonly expected: number
  readonly ratio: number
  readonly interval: readonly [number, number]
  readonly byChance: readonly [number, number]
}

/** One outcome watched in the order of the operations. */
export type Watch = {
  readonly question: OwnQuestion
  readonly known: number
} & (
  | { readonly kind: 'too-few' }
  /** No study gives a share to watch against. */
  | { readonly kind: 'nothing-expected' }
  | {
      readonly kind: 'watched'
      /** What the studies let a new clinic expect, for each of them alike: there is no adjustment for how ill they were. */
      readonly risk: number
      /** All of them together against that share: observed over expected, and what chance alone would bring of them. */
      readonly together: Together
      readonly falseAlarm: number
      readonly rightAlarm: number
      readonly points: readonly WatchPoint[]
    }
)

/**
 * Whether results are getting worse than the studies let expect, in the order of the operations: those whose time has come
 * and of whom it is known, each at its own place, also when it became known late. It says nothing of any person.
 *
 * @param expected the share to watch against; null where no study gives one. Asked for only when enough are known.
 * @example watchOf(question, countedGroups(question, ears, today, rules), () => 0.1, watching).kind
 * Reference: Steiner, Cook, Farewell & Treasure, Biostatistics 2000;1:441–452.
 */
export function watchOf(
  question: OwnQuestion,
  groups: readonly CountedGroup[],
  expected: () => number | null,
  { ratio, limit, least, ahead }: WatchRules,
): Watch {
  const known = groups
    .filter(({ standing }) => standing === 'events' || standing === 'free')
    .sort((a, b) => compareText(a.last, b.last) || compareText(a.ears[0].operation, b.ears[0].operation))
  const about = { question, known: known.length }
  if (known.length < least.value) return { ...about, kind: 'too-few' }
  const risk = expected()
  if (risk === null || !(risk > 0 && risk < 1)) return { ...about, kind: 'nothing-expected' }
  const watched = known.map(({ standing }) => ({ risk, event: standing === 'events' }))
  const design = { ratio: ratio.value, limit: limit.value }
  const { path, signals } = cusumPath(watched, design)
  const signalled = new Set(signals)
  return {
    ...about,
    kind: 'watched',
    risk,
    together: togetherOf(watched),
    falseAlarm: signalWithin(ahead.value, risk, design),
    rightAlarm: signalWithin(ahead.value, risk, design, ratio.value),
    points: known.map(({ last, standing }, i) => ({
      on: last,
      event: standing === 'events',
      value: path[i] ?? 0,
      signal: signalled.has(i),
    })),
  }
}

/** The exact interval by Poisson is careful where the share is not small; what chance brings is worked out exactly. */
function togetherOf(watched: readonly Watched[]): Together {
  const last = expectedLessObserved(watched).at(-1)
  if (!last) throw new Error('Nothing is watched.')
  const { expected, observed, low, high } = last
  const { ratio, interval } = observedOverExpected(observed, expected)
  const whole = (value: number) => Math.round(expected - value)
  return { expected, ratio, interval: [interval.low, interval.high], byChance: [whole(high), whole(low)] }
}
