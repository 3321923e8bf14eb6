import { logit } from '../logistic.ts'
import type { Count } from '../proportion-interval.ts'
import type { Priors } from './priors.ts'

/** What a normal approximation of the studies says, good enough to choose where and how finely to compute. */
export type Rough = {
  /** Log odds and variance of each study, half a case added. */
  readonly studies: readonly { readonly at: number; readonly variance: number }[]
  /** Mean and spread of mu for a given tau. */
  readonly muGiven: (tau: number) => { readonly mean: number; readonly sd: number }
  /** ln of the posterior of tau, up to a constant. */
  readonly logTau: (tau: number) => number
}

/**
 * The normal-normal counterpart of the model.
 *
 * @example roughly([{ events: 23, total: 107 }], priors).muGiven(0.3)
 */
export function roughly(counts: readonly Count[], { mu, tauScale }: Priors): Rough {
  const studies = counts.map(({ events, total }) => ({
    at: logit((events + 0.5) / (total + 1)),
    variance: 1 / (events + 0.5) + 1 / (total - events + 0.5),
  }))
  const sums = (tau: number) => {
    let weight = 1 / (mu.sd * mu.sd)
    let weighted = weight * mu.mean
    let logs = 0
    for (const { at, variance } of studies) {
      const one = 1 / (variance + tau * tau)
      weight += one
      weighted += one * at
      logs += Math.log(one)
    }
    const mean = weighted / weight
    let apart = ((mean - mu.mean) / mu.sd) ** 2
    for (const { at, variance } of studies) apart += (at - mean) ** 2 / (variance + tau * tau)
    return { mean, weight, logs, apart }
  }
  return {
    studies,
    muGiven: (tau) => {
      const { mean, weight } = sums(tau)
      return { mean, sd: 1 / Math.sqrt(weight) }
    },
    logTau: (tau) => {
      const { weight, logs, apart } = sums(tau)
      return 0.5 * (logs - Math.log(weight) - apart) - 0.5 * (tau / tauScale) ** 2
    },
  }
}
