import { binomialChances, exactP } from '../exact-chances.ts'
import type { Count } from '../proportion-interval.ts'

/**
 * The limit of a share at one size of group: the exact binomial quantile with Spiegelhalter's interpolation. Below nought
 * it means that no count is low enough to lie outside; above one, that none is high enough.
 *
 * @param tail the chance below the limit: 0.025, 0.975, 0.001, 0.999
 * @example funnelLimit(0.1, 46, 0.975) // 0.199
 * Reference: Spiegelhalter, Stat Med 2005;24:1185–1202 (formula remembered); other interpolations exist and move the limits
 * of small groups (Manktelow & Seaton, PLoS One 2012, abstract read).
 */
export function funnelLimit(target: number, total: number, tail: number): number {
  const chances = binomialChances(total, target)
  let below = 0
  for (let events = 0; events <= total; events += 1) {
    const here = chances[events] ?? 0
    below += here
    // Rounding must not carry the last number past one that is never reached.
    if (below >= tail || events === total) return (events - (below - tail) / here) / total
  }
  return 1
}

/** How far groups lie apart beyond chance, and each group by itself against the share of all. */
export type FunnelSpread = {
  readonly target: number
  /** Mean squared z: about one where only chance is at work. */
  readonly factor: number
  /** The same with the outermost tenth on either side drawn in. */
  readonly factorDrawnIn: number
  /** Variance between groups beyond chance, by moments; nought where there is none. */
  readonly between: number
  readonly groups: readonly { readonly z: number; readonly orMore: number; readonly midOrMore: number }[]
}

/**
 * Groups against the share of all of them together. For groups of cases, never for people.
 *
 * @example funnelSpread([{ events: 2, total: 20 }, { events: 9, total: 50 }]).factor
 * Reference: Spiegelhalter 2005; winsorising with the quantiles of type 7.
 */
export function funnelSpread(groups: readonly Count[]): FunnelSpread {
  const sum = (of: (group: Count) => number) => groups.reduce((all, group) => all + of(group), 0)
  const target = sum(({ events }) => events) / sum(({ total }) => total)
  const unit = target * (1 - target)
  const z = groups.map(({ events, total }) => (events / total - target) / Math.sqrt(unit / total))
  const [low, high] = [quantile(z, 0.1), quantile(z, 0.9)]
  const square = (values: readonly number[]) => values.reduce((all, value) => all + value * value, 0)
  const weights = groups.map(({ total }) => total / unit)
  const weight = weights.reduce((all, one) => all + one, 0)
  return {
    target,
    factor: square(z) / z.length,
    factorDrawnIn: square(z.map((value) => Math.min(high, Math.max(low, value)))) / z.length,
    between: Math.max(0, (square(z) - (z.length - 1)) / (weight - square(weights) / weight)),
    groups: groups.map(({ events, total }, i) => {
      const chances = binomialChances(total, target)
      const { greater } = exactP(chances, events)
      return { z: z[i] ?? 0, orMore: greater, midOrMore: greater - (chances[events] ?? 0) / 2 }
    }),
  }
}

/** The sample quantile by the straight line between neighbours (type 7). */
function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  const at = (sorted.length - 1) * share
  const [before, after] = [sorted[Math.floor(at)] ?? 0, sorted[Math.ceil(at)] ?? 0]
  return before + (at - Math.floor(at)) * (after - before)
}
