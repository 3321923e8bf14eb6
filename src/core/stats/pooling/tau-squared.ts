import { chiSquareQuantile } from '../incomplete-gamma.ts'
import type { Interval } from '../proportion-interval.ts'
import { rootBetween } from '../root-between.ts'
import { type Effect, weightedMean } from './effects.ts'

/** How the variance between studies is estimated. */
export type TauMethod = 'REML' | 'ML' | 'DL' | 'PM'

/**
 * The variance between studies, at least 0: by restricted or full likelihood (Viechtbauer, J Educ Behav Stat
 * 2005;30:261–293), by moments (DerSimonian & Laird, Control Clin Trials 1986;7:177–188), or as Paule and Mandel (1982).
 *
 * @example tauSquared(counts.map(logitEffect), 'REML')
 */
export function tauSquared(effects: readonly Effect[], method: TauMethod): number {
  if (effects.length < 2) return 0
  switch (method) {
    case 'DL':
      return byMoments(effects)
    case 'PM':
      return whereZero((tau2) => weightedMean(effects, tau2).squares - (effects.length - 1))
    case 'ML':
      return whereZero((tau2) => slope(effects, tau2, false))
    case 'REML':
      return whereZero((tau2) => slope(effects, tau2, true))
  }
}

/**
 * The values of tau² at which the generalised Q meets its χ² limits (Viechtbauer, Stat Med 2007;26:37–52). Both can be 0.
 */
export function tauSquaredInterval(effects: readonly Effect[], confidence = 0.95): Interval {
  const degrees = effects.length - 1
  const tail = (1 - confidence) / 2
  const end = (probability: number) => {
    const limit = chiSquareQuantile(probability, degrees)
    return whereZero((tau2) => weightedMean(effects, tau2).squares - limit)
  }
  return { low: end(1 - tail), high: end(tail) }
}

function byMoments(effects: readonly Effect[]): number {
  const weights = effects.reduce((sum, { variance }) => sum + 1 / variance, 0)
  const squares = effects.reduce((sum, { variance }) => sum + 1 / variance ** 2, 0)
  const excess = weightedMean(effects, 0).squares - (effects.length - 1)
  return Math.max(0, excess / (weights - squares / weights))
}

/** The slope of the (restricted) log-likelihood in tau². */
function slope(effects: readonly Effect[], tau2: number, restricted: boolean): number {
  const { mean } = weightedMean(effects, tau2)
  let weights = 0
  let squares = 0
  let apart = 0
  for (const { at, variance } of effects) {
    const weight = 1 / (variance + tau2)
    weights += weight
    squares += weight * weight
    apart += (weight * (at - mean)) ** 2
  }
  return 0.5 * (apart - weights + (restricted ? squares / weights : 0))
}

/** Where a value that falls with tau² reaches 0; 0 when it is not above 0 to begin with. */
function whereZero(value: (tau2: number) => number): number {
  if (!(value(0) > 0)) return 0
  let high = 0.01
  while (value(high) > 0) {
    high *= 4
    if (high > 1e12) throw new Error('The variance between studies has no end.')
  }
  return rootBetween(value, 0, high)
}
