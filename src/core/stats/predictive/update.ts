import { logBeta } from '../incomplete-beta.ts'
import { logWays } from '../log-ways.ts'
import { expit, log1pExp } from '../logistic.ts'
import { type Count, checkCount } from '../proportion-interval.ts'
import { between, type GridDistribution, normalised } from './grid-distribution.ts'
import type { ShareDistribution } from './share-distribution.ts'
import { momentsOf } from './summary.ts'

/** What the weak part of a robust prior looks like: as heavy as two cases about the published mean, or flat. */
export type WeakShape = 'about-the-mean' | 'flat'

/**
 * Mixes a weak part into what the studies say, so that own results that contradict them can win (Schmidli et al.,
 * Biometrics 2014;70:1023–1032). About the mean m it is Beta(2m, 2 − 2m); Beta(1, 1) says 50 % and pulls small risks up.
 *
 * @param weight of the weak part, 0 to 1.
 * @example robustly(predictive.distribution, { weight: 0.2 })
 */
export function robustly(
  { grid }: ShareDistribution,
  { weight, shape = 'about-the-mean' }: { readonly weight: number; readonly shape?: WeakShape },
): ShareDistribution {
  if (!(weight >= 0 && weight <= 1)) throw new Error(`A weight lies between 0 and 1, not ${weight}.`)
  if (weight === 0) return { grid, weak: null }
  const { mean } = momentsOf({ grid, weak: null })
  return { grid, weak: shape === 'flat' ? { weight, a: 1, b: 1 } : { weight, a: 2 * mean, b: 2 * (1 - mean) } }
}

/** What is known after own results, and how probable they were before. */
export type Updated = {
  readonly distribution: ShareDistribution
  /** The weight of the weak part now; well above what it was, the studies and the own results contradict each other. */
  readonly weakWeight: number
  /** ln of the probability of just these own results before they were seen. */
  readonly logPredictive: number
  /** The own results lie where the grid has ended and the grid still counts: the answer cannot be trusted. */
  readonly beyondGrid: boolean
}

/**
 * Own results added to a prior, computed on the grid itself (no mixture in between). No own case returns the prior.
 *
 * @example updatedBy(robustly(predictive.distribution, { weight: 0.2 }), { events: 0, total: 12 })
 */
export function updatedBy(prior: ShareDistribution, own: Count): Updated {
  checkCount(own)
  const { grid, weak } = prior
  if (own.total === 0) {
    return { distribution: prior, weakWeight: weak?.weight ?? 0, logPredictive: 0, beyondGrid: false }
  }
  const updated = updatedGrid(grid, own)
  if (!weak) {
    return {
      distribution: { grid: updated.grid, weak: null },
      weakWeight: 0,
      logPredictive: updated.logPredictive,
      beyondGrid: updated.atEdge,
    }
  }
  const a = weak.a + own.events
  const b = weak.b + own.total - own.events
  const weakLog = Math.log(weak.weight) + logBeta(a, b) - logBeta(weak.a, weak.b) + logWays(own)
  const gridLog = Math.log(1 - weak.weight) + updated.logPredictive
  const top = Math.max(weakLog, gridLog)
  const logPredictive = top + Math.log(Math.exp(weakLog - top) + Math.exp(gridLog - top))
  const weight = Math.exp(weakLog - logPredictive)
  return {
    distribution: { grid: updated.grid, weak: { weight, a, b } },
    weakWeight: weight,
    logPredictive,
    beyondGrid: updated.atEdge && 1 - weight > 1e-9,
  }
}

/** The grid times the own likelihood, on nodes close enough for both. */
function updatedGrid(grid: GridDistribution, { events, total }: Count) {
  const logLikelihood = (at: number) => events * at - total * log1pExp(at)
  let { from, step } = grid
  let logs: Float64Array = grid.density.map((height) => Math.log(height))
  let posterior = logs.map((log, t) => log + logLikelihood(from + t * step))
  const top = posterior.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY)
  const highest = posterior.indexOf(top)
  const counted = (value: number) => value > top - 70
  const first = Math.max(0, posterior.findIndex(counted) - 8)
  const last = Math.min(posterior.length - 1, posterior.findLastIndex(counted) + 8)
  const atEdge = Math.max(posterior[0] ?? 0, posterior[posterior.length - 1] ?? 0) > top - 20
  const share = expit(from + highest * step)
  const width = 1 / Math.sqrt(total * share * (1 - share) + 1)
  from += first * step
  logs = logs.slice(first, last + 1)
  while (step > 0.3 * width && logs.length < 200_000) {
    logs = halved(logs)
    step /= 2
  }
  posterior = logs.map((log, t) => log + logLikelihood(from + t * step))
  const scale = posterior.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY)
  const { distribution, mass } = normalised(
    from,
    step,
    posterior.map((value) => Math.exp(value - scale)),
  )
  return { grid: distribution, atEdge, logPredictive: scale + Math.log(mass) + logWays({ events, total }) }
}

/** The same logarithms on half the step. */
export function halved(logs: Float64Array): Float64Array {
  const finer = new Float64Array(2 * logs.length - 1)
  for (let t = 0; t < finer.length; t += 1) finer[t] = t % 2 === 0 ? (logs[t / 2] ?? 0) : between(logs, t / 2)
  return finer
}
