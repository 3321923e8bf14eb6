import { logBeta } from '../incomplete-beta.ts'
import { logWays } from '../log-ways.ts'
import { expit } from '../logistic.ts'
import { type Count, checkCount } from '../proportion-interval.ts'
import { bracketedQuantile } from './bracketed-quantile.ts'
import { betaBelowLogOdds, betaLogOddsQuantile, logBetaDensity } from './share-distribution.ts'
import { type ShareSummary, summaryBy } from './summary.ts'

/** A weighted sum of Beta distributions, for storing and explaining a distribution of a share; the weights sum to 1. */
export type BetaMixture = readonly BetaPart[]
export type BetaPart = { readonly weight: number; readonly a: number; readonly b: number }

/**
 * Mean, spread, quantiles and probabilities of a mixture.
 *
 * @example mixtureSummary([{ weight: 1, a: 11, b: 32 }]).mean // 0.2558…
 */
export function mixtureSummary(mixture: BetaMixture): ShareSummary {
  const below = (at: number) => weighed(mixture, (part) => betaBelowLogOdds(at, part))
  const density = (at: number) => weighed(mixture, (part) => Math.exp(logBetaDensity(at, part)))
  const quantile = (probability: number) => {
    const ends = mixture.map((part) => betaLogOddsQuantile(probability, part))
    const [low, high] = [Math.min(...ends), Math.max(...ends)]
    const start = weighed(mixture, (part) => betaLogOddsQuantile(probability, part))
    return expit(bracketedQuantile(probability, below, density, { low, high, start }))
  }
  return summaryBy(mixtureMoments(mixture), quantile, below)
}

/** Mean and standard deviation of a mixture. */
export function mixtureMoments(mixture: BetaMixture): { readonly mean: number; readonly sd: number } {
  const mean = weighed(mixture, ({ a, b }) => a / (a + b))
  const variance = weighed(mixture, ({ a, b }) => (a * b) / ((a + b) ** 2 * (a + b + 1)) + (a / (a + b) - mean) ** 2)
  return { mean, sd: Math.sqrt(variance) }
}

/**
 * Own results added: every part takes them in, and its weight changes by how well it foresaw them.
 *
 * @returns the mixture, and ln of the probability of these results beforehand.
 */
export function updatedMixture(
  mixture: BetaMixture,
  own: Count,
): { readonly mixture: BetaMixture; readonly logPredictive: number } {
  checkCount(own)
  if (own.total === 0) return { mixture, logPredictive: 0 }
  const parts = mixture.map(({ weight, a, b }) => {
    const after = { a: a + own.events, b: b + own.total - own.events }
    return { ...after, log: Math.log(weight) + logBeta(after.a, after.b) - logBeta(a, b) }
  })
  const top = Math.max(...parts.map(({ log }) => log))
  const sum = parts.reduce((all, { log }) => all + Math.exp(log - top), 0)
  return {
    mixture: parts.map(({ a, b, log }) => ({ weight: Math.exp(log - top) / sum, a, b })),
    logPredictive: top + Math.log(sum) + logWays(own),
  }
}

/** The probability of 0, 1, … `total` events among so many own cases. */
export function mixtureExpectedCounts(mixture: BetaMixture, total: number): Float64Array {
  return Float64Array.from({ length: total + 1 }, (_, events) =>
    weighed(mixture, ({ a, b }) =>
      Math.exp(logWays({ events, total }) + logBeta(a + events, b + total - events) - logBeta(a, b)),
    ),
  )
}

/** The probability that a share from the first mixture lies above one from the second. */
export function probabilityGreater(first: BetaMixture, second: BetaMixture): number {
  const step = 0.01
  let sum = 0
  for (let at = -40; at <= 40; at += step) {
    const density = weighed(first, (part) => Math.exp(logBetaDensity(at, part)))
    if (density > 1e-18) sum += density * weighed(second, (part) => betaBelowLogOdds(at, part))
  }
  return sum * step
}

/** The weighted sum of a value of every part. */
export function weighed(mixture: BetaMixture, value: (part: BetaPart) => number): number {
  return mixture.reduce((sum, part) => sum + part.weight * value(part), 0)
}
