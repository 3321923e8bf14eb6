import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { conflictWith } from './conflict.ts'
import { effectiveSize } from './effective-size.ts'
import { predictiveOf } from './predictive.ts'
import { summaryOf } from './summary.ts'
import { robustly, updatedBy } from './update.ts'

const counts = (most: number) =>
  fc
    .integer({ min: 0, max: most })
    .chain((total) => fc.integer({ min: 0, max: total }).map((events) => ({ events, total })))
const studies = fc.array(counts(400), { maxLength: 8 })
const priors = fc.record({
  mu: fc.record({ mean: fc.constantFrom(-3, 0, 1), sd: fc.constantFrom(1, 2, 10) }),
  tauScale: fc.constantFrom(0.25, 0.5, 1),
})
const few = { numRuns: 40 }

describe('what a new clinic may expect', () => {
  it('is a number for every valid count, its interval holds its median, and the grid holds the whole mass', () => {
    fc.assert(
      fc.property(studies, priors, (published, prior) => {
        const predictive = predictiveOf(published, prior)
        const { mean, sd, median, interval } = summaryOf(predictive.distribution)
        expect(Math.abs(predictive.mass - 1)).toBeLessThan(1e-10)
        expect(Number.isFinite(predictive.logMarginalLikelihood)).toBe(true)
        expect(interval.low).toBeLessThanOrEqual(median)
        expect(median).toBeLessThanOrEqual(interval.high)
        return mean >= 0 && mean <= 1 && sd > 0 && sd < 0.5 && interval.low >= 0 && interval.high <= 1
      }),
      few,
    )
  })

  it('does not depend on the order of the studies', () => {
    fc.assert(
      fc.property(studies, (published) => {
        const here = summaryOf(predictiveOf(published).distribution)
        const there = summaryOf(predictiveOf([...published].reverse()).distribution)
        expect(there.mean).toBeCloseTo(here.mean, 11)
        expect(there.interval.high).toBeCloseTo(here.interval.high, 9)
      }),
      few,
    )
  })

  it('is mirrored when events and non-events change places', () => {
    fc.assert(
      fc.property(studies, (published) => {
        const here = summaryOf(predictiveOf(published).distribution)
        const mirrored = published.map(({ events, total }) => ({ events: total - events, total }))
        const there = summaryOf(predictiveOf(mirrored).distribution)
        expect(1 - there.mean).toBeCloseTo(here.mean, 8)
        expect(1 - there.interval.low).toBeCloseTo(here.interval.high, 7)
      }),
      few,
    )
  })
})

describe('own results added', () => {
  it('are numbers for every valid count, also in conflict, and the interval holds the median', () => {
    fc.assert(
      fc.property(studies, counts(300), (published, own) => {
        const prior = robustly(predictiveOf(published).distribution, { weight: 0.2 })
        const after = updatedBy(prior, own)
        const { mean, sd, median, interval } = summaryOf(after.distribution)
        const conflict = conflictWith(prior, own)
        expect(interval.low).toBeLessThanOrEqual(median)
        expect(median).toBeLessThanOrEqual(interval.high)
        expect(after.beyondGrid).toBe(false)
        expect(Number.isFinite(effectiveSize(after.distribution).moment)).toBe(true)
        if (conflict.kind === 'compared') expect(conflict.midP).toBeLessThanOrEqual(1)
        return mean >= 0 && mean <= 1 && sd > 0 && after.weakWeight >= 0 && after.weakWeight <= 1
      }),
      few,
    )
  })

  it('raise the mean with every further event among the same number', () => {
    fc.assert(
      fc.property(studies, fc.integer({ min: 1, max: 30 }), (published, total) => {
        const prior = robustly(predictiveOf(published).distribution, { weight: 0.2 })
        let before = -1
        for (let events = 0; events <= total; events += 1) {
          const { mean } = summaryOf(updatedBy(prior, { events, total }).distribution)
          expect(mean).toBeGreaterThan(before)
          before = mean
        }
      }),
      { numRuns: 15 },
    )
  })
})
