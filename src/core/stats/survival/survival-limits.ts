import { normalQuantile } from '../special-functions.ts'
import type { SurvivalCurve } from './kaplan-meier.ts'

/** On which scale the limits are symmetric. Log-log stays between nought and one and is the one shown for few cases. */
export const limitScales = ['log-log', 'log', 'plain'] as const
export type LimitScale = (typeof limitScales)[number]

/** Both limits of a share; null where that scale has none. */
export type Limits = { readonly low: number | null; readonly high: number | null }

export const noLimits: Limits = { low: null, high: null }

/**
 * Limits of one share of a curve. None are defined once nobody is left, nor on the log-log scale before the first event.
 *
 * @param share between 0 and 1
 * @param logVariance variance of its logarithm
 * @param z positive normal quantile, 1.96 for 95 %
 * Reference: Kalbfleisch & Prentice, The Statistical Analysis of Failure Time Data, 2nd ed. 2002, chapter 1 (remembered).
 */
export function limitsOf(share: number, logVariance: number, z: number, scale: LimitScale): Limits {
  if (!(share > 0)) return noLimits
  const error = Math.sqrt(logVariance)
  switch (scale) {
    case 'log':
      return { low: share * Math.exp(-z * error), high: Math.min(1, share * Math.exp(z * error)) }
    case 'plain':
      return { low: Math.max(0, share - z * share * error), high: Math.min(1, share + z * share * error) }
    case 'log-log': {
      if (share >= 1) return noLimits
      const wide = (z * error) / Math.log(share)
      return { low: share ** Math.exp(-wide), high: share ** Math.exp(wide) }
    }
  }
}

/** The positive normal quantile for a two-sided confidence, 1.96 for 0.95. */
export function twoSided(confidence: number): number {
  return -normalQuantile((1 - confidence) / 2)
}

/** The limits after one line of the life table; before the first nobody has had the event. */
export function limitsAt(curve: SurvivalCurve, line: number, scale: LimitScale, confidence = 0.95): Limits {
  const share = line < 0 ? 1 : (curve.survival[line] ?? Number.NaN)
  return limitsOf(share, curve.logVariance[line] ?? 0, twoSided(confidence), scale)
}
