import { chiSquareAbove } from '../incomplete-gamma.ts'
import { type Effect, typicalVariance, weightedMean } from './effects.ts'
import { type TauMethod, tauSquared } from './tau-squared.ts'

/** What two-step pooling says, on the scale of the effects. */
export type InverseVariance = {
  readonly mean: number
  readonly se: number
  readonly tau2: number
} & Heterogeneity

/** How far the studies lie apart. */
export type Heterogeneity = {
  /** Weighted squares about the common mean, with its degrees of freedom and the probability of as much by chance. */
  readonly q: number
  readonly qDf: number
  readonly qP: number
  /** The share of variance that lies between studies, from tau², 0–1. */
  readonly i2: number
  /** The other definition, (Q − df) / Q, 0–1; it agrees only when tau² comes from moments. */
  readonly i2FromQ: number
}

/**
 * Random effects by inverse variance: each study weighs 1 / (its variance + tau²).
 *
 * @example inverseVariance(counts.map(logitEffect), 'REML')
 */
export function inverseVariance(effects: readonly Effect[], method: TauMethod): InverseVariance {
  const tau2 = tauSquared(effects, method)
  const { mean, se } = weightedMean(effects, tau2)
  return { mean, se, tau2, ...heterogeneity(effects, tau2) }
}

/** Q and both definitions of I² for a tau² found in any way; one study has none of them. */
export function heterogeneity(effects: readonly Effect[], tau2: number): Heterogeneity {
  const qDf = effects.length - 1
  if (qDf < 1) return { q: 0, qDf: 0, qP: 1, i2: 0, i2FromQ: 0 }
  const q = weightedMean(effects, 0).squares
  return {
    q,
    qDf,
    qP: chiSquareAbove(q, qDf),
    i2: tau2 / (tau2 + typicalVariance(effects)),
    i2FromQ: q > 0 ? Math.max(0, (q - qDf) / q) : 0,
  }
}
