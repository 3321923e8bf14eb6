import type { Category } from '#core/culture/reading.ts'
import { wilsonInterval } from '#core/stats/proportion-interval.ts'
import type { AntibiogramMethod } from './method.ts'

/** How many isolates read what, of one drug. */
export type DrugCounts = {
  readonly s: number
  readonly sdd: number
  readonly i: number
  readonly r: number
  /** Not susceptible, where the standard knows no R. */
  readonly ns: number
  /** A value from which the category cannot be told. */
  readonly notInterpretable: number
  /** Tested, but the edition has no breakpoint. */
  readonly noBreakpoint: number
  readonly notTested: number
}

export const noCounts: DrugCounts = {
  s: 0,
  sdd: 0,
  i: 0,
  r: 0,
  ns: 0,
  notInterpretable: 0,
  noBreakpoint: 0,
  notTested: 0,
}

export const countOfCategory: Readonly<Record<Category, keyof DrugCounts>> = {
  S: 's',
  SDD: 'sdd',
  I: 'i',
  R: 'r',
  NS: 'ns',
  NI: 'notInterpretable',
  no_breakpoint: 'noBreakpoint',
}

/** Shares in per cent to one decimal, as published tables print them; null where none is told. */
export type DrugFigures = DrugCounts & {
  /** Isolates with a category: the denominator. */
  readonly n: number
  readonly percent: number | null
  /** Wilson, 95 %. */
  readonly interval: readonly [low: number, high: number] | null
  readonly percentSdd: number | null
  readonly percentR: number | null
  /** `n_below_30`: told, and few. */
  readonly flag: string | null
}

/**
 * The share that is susceptible: S alone, of those with a category. What cannot be read, and what was not tested, stands
 * beside the denominator (after CLSI M39).
 *
 * @example drugFigures({ ...noCounts, s: 20, r: 5 }, { flagBelow: 30, minimum: 1 }) // 80.0, 60.9–91.1, n_below_30
 */
export function drugFigures(
  counts: DrugCounts,
  { flagBelow, minimum }: Pick<AntibiogramMethod, 'flagBelow' | 'minimum'>,
): DrugFigures {
  const n = counts.s + counts.sdd + counts.i + counts.r + counts.ns
  const flag = flagOf(n, flagBelow)
  const untold = { percent: null, interval: null, percentSdd: null, percentR: null }
  if (n < Math.max(1, minimum)) return { ...counts, n, ...untold, flag }
  const interval = wilsonInterval({ events: counts.s, total: n })
  if (interval.kind === 'refusal') throw new Error(`No interval of ${counts.s} of ${n}.`)
  const { low, high } = interval.answer
  return {
    ...counts,
    n,
    percent: perHundred(counts.s, n),
    interval: [oneDecimal(100 * low), oneDecimal(100 * high)],
    percentSdd: perHundred(counts.sdd, n),
    percentR: perHundred(counts.r, n),
    flag,
  }
}

export function flagOf(n: number, flagBelow: number): string | null {
  return n < flagBelow ? `n_below_${flagBelow}` : null
}

/** Rounded from the exact fraction, so that 11 of 16 is 68.8 and not what 68.75 happens to be in binary. */
function perHundred(part: number, n: number): number {
  return Math.floor((2000 * part + n) / (2 * n)) / 10
}

function oneDecimal(value: number): number {
  return Math.round(10 * value) / 10
}
