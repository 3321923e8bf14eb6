import { betaBelow, logBeta } from '../incomplete-beta.ts'
import { expit, log1pExp, logit } from '../logistic.ts'
import { betaQuantile } from '../special-functions.ts'
import type { GridDistribution } from './grid-distribution.ts'

/** What a distribution of a share is made of: a grid, and with it, when it was made robust, a weak Beta. */
export type ShareDistribution = {
  readonly grid: GridDistribution
  readonly weak: WeakPart | null
}

/** A Beta(a, b) that carries `weight` (0 to 1) of the whole; the grid carries the rest. */
export type WeakPart = { readonly weight: number; readonly a: number; readonly b: number }

/** The density of a Beta share per unit of log odds, as a logarithm. */
export function logBetaDensity(logOdds: number, { a, b }: { readonly a: number; readonly b: number }): number {
  return -a * log1pExp(-logOdds) - b * log1pExp(logOdds) - logBeta(a, b)
}

/** The probability that a Beta share lies below these log odds, exact also where the share rounds to 1. */
export function betaBelowLogOdds(logOdds: number, { a, b }: { readonly a: number; readonly b: number }): number {
  return logOdds <= 0 ? betaBelow(expit(logOdds), { a, b }) : betaBelow(expit(-logOdds), { a: b, b: a }, 'upper')
}

/** The log odds below which a Beta share falls with this probability; beyond e^∓740 nothing can be told apart. */
export function betaLogOddsQuantile(probability: number, { a, b }: { readonly a: number; readonly b: number }): number {
  const share = betaQuantile(probability, { a, b })
  const at = share < 0.5 ? logit(share) : -logit(betaQuantile(probability, { a: b, b: a }, 'upper'))
  return Math.max(-740, Math.min(740, at))
}
