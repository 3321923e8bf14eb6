import { logBeta } from '../incomplete-beta.ts'
import { expit } from '../logistic.ts'
import { type Count, checkCount } from '../proportion-interval.ts'
import { logGamma } from '../special-functions.ts'
import type { GridDistribution } from './grid-distribution.ts'
import type { ShareDistribution } from './share-distribution.ts'
import { halved } from './update.ts'

/** How surprising own results are for who believed the prior. Not a test of the surgeon: the studies can be at fault. */
export type Conflict =
  | { readonly kind: 'cannot-conflict'; readonly total: number }
  | {
      readonly kind: 'compared'
      /** The probability of so many events or fewer, and of so many or more. */
      readonly atMost: number
      readonly atLeast: number
      /** Two-sided, counting half of what was observed. */
      readonly midP: number
      /** The probability of every number of events at most as probable as the observed one (Box, J R Stat Soc A 1980;143:383–430). */
      readonly box: number
    }

/** With so few own cases nothing can contradict anything. */
export const tooFewToConflict = 3

/**
 * Compares own results with what the prior expected of so many cases.
 *
 * @example conflictWith(predictive.distribution, { events: 9, total: 15 }) // { kind: 'compared', midP: 0.0027, … }
 */
export function conflictWith(prior: ShareDistribution, own: Count): Conflict {
  checkCount(own)
  if (own.total <= tooFewToConflict) return { kind: 'cannot-conflict', total: own.total }
  const expected = expectedCounts(prior, own.total)
  const here = expected[own.events] ?? 0
  let fewer = 0
  let more = 0
  let box = 0
  expected.forEach((probability, events) => {
    if (events < own.events) fewer += probability
    if (events > own.events) more += probability
    // Equally probable ones count too, also when rounding made them differ.
    if (probability <= here * (1 + 1e-7)) box += probability
  })
  return {
    kind: 'compared',
    atMost: Math.min(1, fewer + here),
    atLeast: Math.min(1, more + here),
    midP: Math.min(1, 2 * Math.min(fewer + here / 2, more + here / 2)),
    box: Math.min(1, box),
  }
}

/**
 * The probability of 0, 1, … `total` events among so many own cases, as the prior expects them.
 *
 * @example expectedCounts(predictive.distribution, 12)[0]
 */
export function expectedCounts({ grid, weak }: ShareDistribution, total: number): Float64Array {
  const logFactorial = Float64Array.from({ length: total + 1 }, (_, k) => logGamma(k + 1))
  const ways = (events: number) =>
    (logFactorial[total] ?? 0) - (logFactorial[events] ?? 0) - (logFactorial[total - events] ?? 0)
  const expected = onGrid(fineEnough(grid, total), total, ways)
  if (!weak) return expected
  return expected.map((probability, events) => {
    const other = Math.exp(ways(events) + logBeta(weak.a + events, weak.b + total - events) - logBeta(weak.a, weak.b))
    return (1 - weak.weight) * probability + weak.weight * other
  })
}

/** Each node spreads its mass over the counts about its own expectation, by the ratio of neighbouring counts. */
function onGrid({ from, step, density }: GridDistribution, total: number, ways: (events: number) => number) {
  const expected = new Float64Array(total + 1)
  for (let t = 0; t < density.length; t += 1) {
    const mass = (density[t] ?? 0) * step
    const at = from + t * step
    const odds = Math.exp(at)
    const likeliest = Math.min(total, Math.round(total * expit(at)))
    const top =
      mass * Math.exp(ways(likeliest) + likeliest * -Math.log1p(Math.exp(-at)) - (total - likeliest) * Math.log1p(odds))
    let value = top
    for (let events = likeliest; events <= total && value > 1e-18 * top; events += 1) {
      expected[events] = (expected[events] ?? 0) + value
      value *= ((total - events) / (events + 1)) * odds
    }
    value = (top * likeliest) / ((total - likeliest + 1) * odds)
    for (let events = likeliest - 1; events >= 0 && value > 1e-18 * top; events -= 1) {
      expected[events] = (expected[events] ?? 0) + value
      value *= events / ((total - events + 1) * odds)
    }
  }
  return expected
}

/** Many own cases make a likelihood narrower than the grid: halve until it is not. */
function fineEnough(grid: GridDistribution, total: number): GridDistribution {
  let { step, density } = grid
  while (step > 1.6 / Math.sqrt(total) && density.length < 100_000) {
    density = halved(density.map(Math.log)).map(Math.exp)
    step /= 2
  }
  return { from: grid.from, step, density }
}
