import { describe, expect, it } from 'vitest'
import { conflictWith } from './conflict.ts'
import { predictiveOf } from './predictive.ts'
import { momentsOf, summaryOf } from './summary.ts'
import { robustly, updatedBy } from './update.ts'

const placebo = [
  [23, 107],
  [12, 44],
  [19, 51],
  [9, 39],
  [39, 139],
  [6, 20],
  [9, 78],
  [10, 35],
].map(([events = 0, total = 0]) => ({ events, total }))
const { distribution } = predictiveOf(placebo)

describe('predictiveOf', () => {
  it('gives the prior back when nothing was published: 50 % and almost everything possible', () => {
    const { mean, interval } = summaryOf(predictiveOf([]).distribution)
    expect(mean).toBeCloseTo(0.5, 12)
    expect(interval.low).toBeCloseTo(0.0122, 4)
  })

  it('learns nothing from a study without cases', () => {
    expect(predictiveOf([...placebo, { events: 0, total: 0 }]).distribution).toEqual(distribution)
  })

  it('stands in one answer with studies of a million cases', () => {
    const { mean, interval } = summaryOf(
      predictiveOf([
        { events: 250_000, total: 1_000_000 },
        { events: 251_000, total: 1_000_000 },
        { events: 0, total: 20 },
      ]).distribution,
    )
    expect(mean).toBeGreaterThan(interval.low)
    expect(mean).toBeLessThan(interval.high)
  })

  it('does not accept a count that cannot be, or a prior without a spread', () => {
    expect(() => predictiveOf([{ events: 3, total: 2 }])).toThrow('is not a count')
    expect(() => predictiveOf([], { mu: { mean: 0, sd: 0 }, tauScale: 1 })).toThrow('above 0')
  })
})

describe('robustly', () => {
  it('keeps the mean when the weak part stands about the mean, and moves it when the weak part is flat', () => {
    const { mean } = momentsOf(distribution)
    expect(momentsOf(robustly(distribution, { weight: 0.2 })).mean).toBeCloseTo(mean, 12)
    expect(momentsOf(robustly(distribution, { weight: 0.2, shape: 'flat' })).mean).toBeCloseTo(0.8 * mean + 0.1, 12)
  })

  it('is wider than what it was made from', () => {
    expect(momentsOf(robustly(distribution, { weight: 0.2 })).sd).toBeGreaterThan(momentsOf(distribution).sd)
  })
})

describe('updatedBy', () => {
  const prior = robustly(distribution, { weight: 0.2 })

  it('returns the prior itself without an own case', () => {
    expect(updatedBy(prior, { events: 0, total: 0 }).distribution).toBe(prior)
  })

  it('lets the weak part grow when own results contradict the studies', () => {
    expect(updatedBy(prior, { events: 5, total: 20 }).weakWeight).toBeLessThan(0.2)
    expect(updatedBy(prior, { events: 19, total: 20 }).weakWeight).toBeGreaterThan(0.9)
  })

  it('says so when own results lie where the grid has ended and nothing else carries them', () => {
    const many = Array.from({ length: 60 }, () => ({ events: 0, total: 500 }))
    const sure = predictiveOf(many, { mu: { mean: 0, sd: 2 }, tauScale: 0.05 }).distribution
    expect(updatedBy(sure, { events: 4000, total: 4000 }).beyondGrid).toBe(true)
    expect(updatedBy(robustly(sure, { weight: 0.2 }), { events: 4000, total: 4000 }).beyondGrid).toBe(false)
  })
})

describe('conflictWith', () => {
  it('knows that three own cases cannot contradict anything', () => {
    expect(conflictWith(distribution, { events: 3, total: 3 })).toEqual({ kind: 'cannot-conflict', total: 3 })
    expect(conflictWith(distribution, { events: 4, total: 4 }).kind).toBe('compared')
  })
})
