import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leaveOneOut } from './leave-one-out.ts'
import { type Pooled, poolCounts } from './pool.ts'

const count = fc
  .integer({ min: 1, max: 400 })
  .chain((total) => fc.integer({ min: 0, max: total }).map((events) => ({ events, total })))
const counts = fc.array(count, { minLength: 1, maxLength: 9 })
const how = fc.record({
  method: fc.constantFrom('binomial-normal', 'inverse-variance-logit', 'double-arcsine'),
  tau: fc.constantFrom('REML', 'ML', 'DL', 'PM'),
} as const)

function numbersOf({ estimate, interval, prediction, tau2, heterogeneity }: Pooled): number[] {
  const apart = heterogeneity ? Object.values(heterogeneity) : []
  const range = prediction ? [prediction.low, prediction.high] : []
  return [estimate ?? 0.5, interval.low, interval.high, tau2 ?? 0, ...range, ...apart]
}

describe('pooling', () => {
  it('gives numbers for every valid counts, and its interval holds its point', () => {
    fc.assert(
      fc.property(counts, how, (studies, by) => {
        const pooled = poolCounts(studies, by)
        expect(numbersOf(pooled).every(Number.isFinite)).toBe(true)
        if (pooled.estimate === null) return
        expect(pooled.interval.low).toBeLessThanOrEqual(pooled.estimate)
        expect(pooled.estimate).toBeLessThanOrEqual(pooled.interval.high)
        if (!pooled.prediction) return
        expect(pooled.prediction.low).toBeLessThanOrEqual(pooled.interval.low)
        expect(pooled.prediction.high).toBeGreaterThanOrEqual(pooled.interval.high)
      }),
      { numRuns: 150 },
    )
  })

  it('does not depend on the order of the studies', () => {
    fc.assert(
      fc.property(counts, how, (studies, by) => {
        const here = poolCounts(studies, by)
        const there = poolCounts([...studies].reverse(), by)
        expect(there.estimate ?? 0).toBeCloseTo(here.estimate ?? 0, 7)
        expect(there.tau2 ?? 0).toBeCloseTo(here.tau2 ?? 0, 5)
      }),
      { numRuns: 60 },
    )
  })

  it('names no typical study where each is all or none: the most likely spread is without end', () => {
    const apart = [
      { events: 1, total: 1 },
      { events: 0, total: 2 },
    ]
    expect(poolCounts(apart, { method: 'binomial-normal' })).toMatchObject({
      estimate: null,
      tau2: null,
      notes: ['all-or-none-in-each'],
    })
    expect(poolCounts(apart, { method: 'inverse-variance-logit' }).estimate).not.toBeNull()
  })

  it('is mirrored when events and non-events change places', () => {
    fc.assert(
      fc.property(counts, (studies) => {
        const by = { method: 'binomial-normal' } as const
        const here = poolCounts(studies, by)
        const there = poolCounts(
          studies.map(({ events, total }) => ({ events: total - events, total })),
          by,
        )
        if (here.estimate !== null) expect(1 - (there.estimate ?? 0)).toBeCloseTo(here.estimate, 7)
        expect(1 - there.interval.low).toBeCloseTo(here.interval.high, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('leaves every study out once, or none when too few would be left', () => {
    fc.assert(
      fc.property(counts, (studies) => {
        const without = leaveOneOut(studies, { method: 'inverse-variance-logit' })
        return without.length === (studies.length < 3 ? 0 : studies.length)
      }),
      { numRuns: 40 },
    )
  })
})
