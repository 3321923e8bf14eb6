import { expit, logit } from '../logistic.ts'
import type { Interval } from '../proportion-interval.ts'
import { bracketedQuantile } from './bracketed-quantile.ts'
import { type GridBelow, gridBelow } from './grid-below.ts'
import { betaBelowLogOdds, betaLogOddsQuantile, logBetaDensity, type ShareDistribution } from './share-distribution.ts'

/** A distribution of a share in a few numbers, all on 0–1. */
export type ShareSummary = {
  readonly mean: number
  readonly sd: number
  readonly median: number
  /** The middle 95 %. */
  readonly interval: Interval
  readonly quantile: (probability: number) => number
  /** The probability that the share lies above x. */
  readonly above: (x: number) => number
}

/**
 * Mean, spread, quantiles and probabilities of a share.
 *
 * @example summaryOf(predictiveOf(studies).distribution).interval
 */
export function summaryOf(distribution: ShareDistribution): ShareSummary {
  const below = gridBelow(distribution.grid)
  const quantile = (probability: number) => {
    if (!(probability > 0 && probability < 1)) throw new Error(`A quantile lies between 0 and 1, not ${probability}.`)
    return expit(logOddsQuantile(probability, distribution, below))
  }
  return summaryBy(momentsOf(distribution), quantile, (at) => belowLogOdds(at, distribution, below))
}

/** The few numbers of any distribution of a share, from its moments, its quantiles and its distribution on the log odds. */
export function summaryBy(
  { mean, sd }: { readonly mean: number; readonly sd: number },
  quantile: (probability: number) => number,
  below: (logOdds: number) => number,
): ShareSummary {
  return {
    mean,
    sd,
    median: quantile(0.5),
    interval: { low: quantile(0.025), high: quantile(0.975) },
    quantile,
    above: (x) => (x <= 0 ? 1 : x >= 1 ? 0 : 1 - below(logit(x))),
  }
}

/** Mean and standard deviation of a share, without the work of its quantiles. */
export function momentsOf({ grid, weak }: ShareDistribution): { readonly mean: number; readonly sd: number } {
  let first = 0
  for (let t = 0; t < grid.density.length; t += 1) first += (grid.density[t] ?? 0) * expit(grid.from + t * grid.step)
  first *= grid.step
  let spread = 0
  for (let t = 0; t < grid.density.length; t += 1) {
    spread += (grid.density[t] ?? 0) * (expit(grid.from + t * grid.step) - first) ** 2
  }
  spread *= grid.step
  if (!weak) return { mean: first, sd: Math.sqrt(spread) }
  const { weight, a, b } = weak
  const other = a / (a + b)
  const mean = (1 - weight) * first + weight * other
  const otherSpread = (other * (1 - other)) / (a + b + 1)
  const variance = (1 - weight) * (spread + (first - mean) ** 2) + weight * (otherSpread + (other - mean) ** 2)
  return { mean, sd: Math.sqrt(variance) }
}

function belowLogOdds(at: number, { weak }: ShareDistribution, grid: GridBelow): number {
  if (!weak) return grid.below(at)
  return (1 - weak.weight) * grid.below(at) + weak.weight * betaBelowLogOdds(at, weak)
}

/** The quantile of a mixture lies between those of its parts. */
function logOddsQuantile(probability: number, distribution: ShareDistribution, grid: GridBelow): number {
  const alone = grid.quantile(probability)
  const { weak } = distribution
  if (!weak || weak.weight === 0) return alone
  const other = betaLogOddsQuantile(probability, weak)
  const density = (at: number) =>
    (1 - weak.weight) * grid.density(at) + weak.weight * Math.exp(logBetaDensity(at, weak))
  return bracketedQuantile(probability, (at) => belowLogOdds(at, distribution, grid), density, {
    low: Math.min(alone, other),
    high: Math.max(alone, other),
    start: weak.weight > 0.5 ? other : alone,
  })
}
