import type { Count } from '../proportion-interval.ts'

/** One study's estimate on some scale, with its variance there. */
export type Effect = { readonly at: number; readonly variance: number }

/**
 * The log odds of a study and its variance. Half a case is added to both cells only where one of them is empty.
 *
 * @example logitEffect({ events: 7, total: 52 }) // { at: −1.8607…, variance: 0.1650… }
 */
export function logitEffect({ events, total }: Count): Effect {
  const add = hasEmptyCell({ events, total }) ? 0.5 : 0
  const yes = events + add
  const no = total - events + add
  return { at: Math.log(yes / no), variance: 1 / yes + 1 / no }
}

/** Nobody or everybody had the event. */
export function hasEmptyCell({ events, total }: Count): boolean {
  return events === 0 || events === total
}

/**
 * The weighted mean of effects with a further variance tau² between them.
 *
 * @returns the mean, its standard error, and the weighted squares about it.
 */
export function weightedMean(effects: readonly Effect[], tau2: number) {
  let weights = 0
  let weighted = 0
  for (const { at, variance } of effects) {
    const weight = 1 / (variance + tau2)
    weights += weight
    weighted += weight * at
  }
  const mean = weighted / weights
  const squares = effects.reduce((sum, { at, variance }) => sum + (at - mean) ** 2 / (variance + tau2), 0)
  return { mean, se: 1 / Math.sqrt(weights), squares }
}

/** The typical variance within a study (Higgins & Thompson, Stat Med 2002;21:1539–1558). */
export function typicalVariance(effects: readonly Effect[]): number {
  const weights = effects.reduce((sum, { variance }) => sum + 1 / variance, 0)
  const squares = effects.reduce((sum, { variance }) => sum + 1 / variance ** 2, 0)
  return ((effects.length - 1) * weights) / (weights * weights - squares)
}
