import { expit } from '../logistic.ts'
import { type Count, checkCount, exactInterval, type Interval } from '../proportion-interval.ts'
import { normalQuantile } from '../special-functions.ts'
import { studentQuantile } from '../student-quantile.ts'
import { binomialNormal } from './binomial-normal.ts'
import { doubleArcsine, fromDoubleArcsine, harmonicMean } from './double-arcsine.ts'
import { hasEmptyCell, logitEffect } from './effects.ts'
import { type Heterogeneity, heterogeneity, inverseVariance } from './inverse-variance.ts'
import type { TauMethod } from './tau-squared.ts'

export type PoolMethod = 'binomial-normal' | 'inverse-variance-logit' | 'double-arcsine'

/** What a reader must be told beside the numbers; the sentences stand in content. */
export type PoolNote =
  | 'one-study'
  | 'two-studies'
  | 'no-event-anywhere'
  | 'all-had-the-event'
  | 'studies-of-one-case'
  | 'all-or-none-in-each'
  | 'no-spread-detectable'
  | 'half-a-case-added'
  | 'taken-back-by-harmonic-mean'
  | 'typical-not-average'

/** Pooled proportions, all on 0–1. */
export type Pooled = {
  /** The number of studies with a case. */
  readonly k: number
  /** The share of a typical study; null where nothing but an exact interval can be said. */
  readonly estimate: number | null
  /** 95 %: Wald on the pooling scale; exact for the sum, or for the one study, where there is no estimate. */
  readonly interval: Interval
  /** Where 95 % of new studies would lie, by t with k − 2 degrees of freedom; null below three studies. */
  readonly prediction: Interval | null
  readonly tau2: number | null
  readonly heterogeneity: Heterogeneity | null
  readonly notes: readonly PoolNote[]
}

/**
 * Pools published counts. With one study, or where nobody or everybody had the event, there is no pooled point: the exact
 * interval of the study, or of the sum, is all that can be said.
 *
 * @param counts at least one, each with at least one case.
 * @param tau how the variance between studies is found; the binomial-normal model always uses its own likelihood.
 * @example poolCounts([{ events: 7, total: 52 }, { events: 3, total: 33 }], { method: 'binomial-normal' })
 */
export function poolCounts(
  counts: readonly Count[],
  { method, tau = 'REML' }: { readonly method: PoolMethod; readonly tau?: TauMethod },
): Pooled {
  counts.forEach(checkCount)
  if (counts.length === 0 || counts.some(({ total }) => total === 0))
    throw new Error('Pooling needs studies with cases.')
  const without = withoutPoint(counts, method)
  if (without) return onlyExact(counts, without)
  if (method === 'binomial-normal') return byLikelihood(counts)
  const arcsine = method === 'double-arcsine'
  const effects = counts.map(arcsine ? doubleArcsine : logitEffect)
  const { mean, se, tau2, ...apart } = inverseVariance(effects, tau)
  const cases = harmonicMean(counts)
  const back = arcsine ? (at: number) => fromDoubleArcsine(at, cases) : expit
  const notes: PoolNote[] = arcsine
    ? ['taken-back-by-harmonic-mean']
    : counts.some(hasEmptyCell)
      ? ['half-a-case-added']
      : []
  return told(counts.length, { mean, se, tau2 }, apart, back, notes)
}

function byLikelihood(counts: readonly Count[]): Pooled {
  const fit = binomialNormal(counts)
  if (!fit) throw new Error('A sum with and without events has a most likely share.')
  const tau2 = fit.tau * fit.tau
  const apart = heterogeneity(counts.map(logitEffect), tau2)
  return told(counts.length, { mean: fit.mu, se: fit.se, tau2 }, apart, expit, [])
}

function told(
  k: number,
  { mean, se, tau2 }: { readonly mean: number; readonly se: number; readonly tau2: number },
  apart: Heterogeneity,
  back: (at: number) => number,
  notes: readonly PoolNote[],
): Pooled {
  const around = (half: number) => ({ low: back(mean - half), high: back(mean + half) })
  return {
    k,
    estimate: back(mean),
    interval: around(normalQuantile(0.975) * se),
    prediction: k < 3 ? null : around(studentQuantile(0.025, k - 2) * Math.sqrt(se * se + tau2)),
    tau2,
    heterogeneity: apart,
    notes: [
      ...(k === 2 ? (['two-studies'] as const) : []),
      tau2 === 0 ? 'no-spread-detectable' : 'typical-not-average',
      ...notes,
    ],
  }
}

function withoutPoint(counts: readonly Count[], method: PoolMethod): PoolNote | undefined {
  if (counts.length === 1) return 'one-study'
  if (counts.every(({ events }) => events === 0)) return 'no-event-anywhere'
  if (counts.every(({ events, total }) => events === total)) return 'all-had-the-event'
  // Only their sum counts: nothing tells a spread between them from chance.
  if (counts.every(({ total }) => total === 1)) return 'studies-of-one-case'
  // The further apart, the likelier: no spread is the most likely one, and no typical study can be named.
  const allOrNone = counts.every(({ events, total }) => events === 0 || events === total)
  return allOrNone && method === 'binomial-normal' ? 'all-or-none-in-each' : undefined
}

function onlyExact(counts: readonly Count[], note: PoolNote): Pooled {
  const sum = counts.reduce((all, { events, total }) => ({ events: all.events + events, total: all.total + total }), {
    events: 0,
    total: 0,
  })
  const interval = exactInterval(sum)
  if (interval.kind === 'refusal') throw new Error('Studies with cases add up to cases.')
  return {
    k: counts.length,
    estimate: null,
    interval: interval.answer,
    prediction: null,
    tau2: null,
    heterogeneity: null,
    notes: [note],
  }
}
