/** Reference values computed with R (versions and calls in data/intervals.json, `meta`). */
import { describe, expect, it } from 'vitest'
import { digamma, trigamma } from '#core/stats/digamma.ts'
import { binomialChances, exactP, exactTest, poissonChances } from '#core/stats/exact-chances.ts'
import { betaBelow, logBeta } from '#core/stats/incomplete-beta.ts'
import { chiSquareAbove, chiSquareQuantile } from '#core/stats/incomplete-gamma.ts'
import { logWays } from '#core/stats/log-ways.ts'
import { expit, log1pExp } from '#core/stats/logistic.ts'
import {
  eventFreeCases,
  exactInterval,
  jeffreysInterval,
  upperBound,
  wilsonInterval,
} from '#core/stats/proportion-interval.ts'
import { betaQuantile, logGamma, normalQuantile } from '#core/stats/special-functions.ts'
import { studentQuantile } from '#core/stats/student-quantile.ts'
import reference from './data/intervals.json' with { type: 'json' }

/** Relative to the reference; below 1e-12 the reference counts as zero. */
function expectClose(value: number, wanted: number, tolerance: number): void {
  const size = Math.abs(wanted) < 1e-12 ? 1 : Math.abs(wanted)
  const limit = size === 1 && Math.abs(wanted) < 1e-12 ? 1e-12 : tolerance
  expect(Math.abs(value - wanted) / size, `${value} instead of ${wanted}`).toBeLessThanOrEqual(limit)
}

function expectEnds(outcome: ReturnType<typeof exactInterval>, wanted: readonly number[], tolerance: number): void {
  if (outcome.kind === 'refusal') throw new Error(outcome.refusal.because)
  const [low, high] = wanted
  if (low === undefined || high === undefined) throw new Error('The reference holds two ends.')
  expectClose(outcome.answer.low, low, tolerance)
  expectClose(outcome.answer.high, high, tolerance)
}

describe('intervals of one proportion agree with R to 1e-9', () => {
  it('holds all 27 reference cases', () => {
    expect(reference.proportions).toHaveLength(27)
  })

  it.each(reference.proportions)('$events of $total at $confidence', (row) => {
    expect(row.tolerance).toEqual({ kind: 'rel', value: 1e-9 })
    const limit = row.tolerance.value
    expectEnds(exactInterval(row, row.confidence), row.exact, limit)
    expectEnds(wilsonInterval(row, row.confidence), row.wilson, limit)
    expectEnds(jeffreysInterval(row, row.confidence), row.jeffreys, limit)
    const bound = upperBound(row, row.confidence)
    if (bound.kind === 'refusal') throw new Error(bound.refusal.because)
    expectClose(bound.answer, row.upperOneSided, limit)
  })
})

describe('no event in n: the exact bounds behind the rule of three (Hanley & Lippman-Hand, JAMA 1983;249:1743)', () => {
  it.each(reference.noEvents)('0 of $total', (row) => {
    const bound = upperBound({ events: 0, total: row.total })
    if (bound.kind === 'refusal') throw new Error(bound.refusal.because)
    expectClose(bound.answer, row.upperOneSided, row.tolerance.value)
    expectEnds(exactInterval({ events: 0, total: row.total }), [0, row.upperTwoSided], row.tolerance.value)
  })
})

it.each(reference.eventFree)('$cases cases without an event exclude a rate of $rate', ({ rate, cases, casesAt99 }) => {
  expect(eventFreeCases(rate)).toBe(cases)
  expect(eventFreeCases(rate, 0.99)).toBe(casesAt99)
})

/**
 * What our own statistics stand on. Two of the list have no function here, because nothing asks for them: the tail of
 * Student's t and that of the normal curve.
 */
const notOurs = ['pnorm', 'pt_upper']

describe('special functions agree with R and 160-bit arithmetic to 1e-12', () => {
  const { tolerance, values } = reference.specialFunctions

  it.each(values.filter(({ fn }) => !notOurs.includes(fn)))('$fn $args', ({ fn, args, value, mpfr }) => {
    const [x = Number.NaN, a = Number.NaN, b = Number.NaN] = args
    const wanted = mpfr === undefined ? value : Number(mpfr)
    const same = (found: number) => expectClose(found, wanted, tolerance.value)
    switch (fn) {
      case 'lgamma':
        return same(logGamma(x))
      case 'digamma':
        return same(digamma(x))
      case 'trigamma':
        return same(trigamma(x))
      case 'lbeta':
        return same(logBeta(x, a))
      case 'lchoose':
        return same(logWays({ total: x, events: a }))
      case 'qnorm':
        return same(normalQuantile(x))
      case 'qbeta':
        return same(betaQuantile(x, { a, b }))
      case 'pbeta':
        return same(betaBelow(x, { a, b }))
      case 'qt':
        return same(studentQuantile(1 - x, a))
      case 'pchisq_upper':
        return same(chiSquareAbove(x, a))
      case 'pgamma_shape_rate1':
        return same(1 - chiSquareAbove(2 * x, 2 * a))
      case 'qchisq':
        return same(chiSquareQuantile(x, a))
      case 'qgamma_shape_rate1':
        return same(chiSquareQuantile(x, 2 * a) / 2)
      case 'plogis':
        return same(expit(x))
      case 'log1pexp':
        return same(log1pExp(x))
      case 'dbinom_k_n_p':
        return same(binomialChances(a, b)[x] ?? Number.NaN)
      case 'pbinom_k_n_p':
        return same(exactTest({ events: x, total: a }, b).less)
      case 'pbinom_upper_k_n_p':
        return same(exactTest({ events: x + 1, total: a }, b).greater)
      case 'dpois':
        return same(poissonChances(a, x)[x] ?? Number.NaN)
      case 'ppois':
        return same(exactP(poissonChances(a, x), x).less)
      default:
        throw new Error(`No check for ${fn}.`)
    }
  })
})

describe('intervals printed in the reference notes, recomputed', () => {
  const percent = (outcome: ReturnType<typeof wilsonInterval>) => {
    if (outcome.kind === 'refusal') throw new Error(outcome.refusal.because)
    return [outcome.answer.low, outcome.answer.high].map((end) => Number((100 * end).toFixed(1)))
  }

  it('one surgeon, no lasting facial palsy in 55: up to 6.5 %', () => {
    expect(percent(wilsonInterval({ events: 0, total: 55 }))).toEqual([0, 6.5])
    expect(percent(exactInterval({ events: 0, total: 55 }))).toEqual([0, 6.5])
  })

  it('the same surgeon, a draining tract in 2 of 55: 1.0–12.3 %', () => {
    expect(percent(wilsonInterval({ events: 2, total: 55 }))).toEqual([1, 12.3])
  })

  it('Folk 2022, revision in 13 of 120: 6.4–17.7 %', () => {
    expect(percent(wilsonInterval({ events: 13, total: 120 }))).toEqual([6.4, 17.7])
  })

  it('Doyle 2004, excellent or improved in 27 of 29: 78–98 %', () => {
    expect(percent(wilsonInterval({ events: 27, total: 29 })).map(Math.round)).toEqual([78, 98])
  })
})
