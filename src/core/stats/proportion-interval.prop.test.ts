import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exactInterval, type Interval, jeffreysInterval, upperBound, wilsonInterval } from './proportion-interval.ts'
import { logGamma } from './special-functions.ts'

const counts = fc
  .integer({ min: 1, max: 400 })
  .chain((total) => fc.integer({ min: 0, max: total }).map((events) => ({ events, total })))
const methods = { exactInterval, wilsonInterval, jeffreysInterval }

function ends(outcome: ReturnType<typeof exactInterval>): Interval {
  if (outcome.kind === 'refusal') throw new Error(outcome.refusal.because)
  return outcome.answer
}

describe.each(Object.entries(methods))('%s', (_, interval) => {
  it('always holds the observed share and stays between 0 and 1', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const { low, high } = ends(interval(count))
        const share = count.events / count.total
        return low >= 0 && low <= share && share <= high && high <= 1
      }),
    )
  })

  it('is mirrored when events and non-events change places', () => {
    fc.assert(
      fc.property(counts, ({ events, total }) => {
        const here = ends(interval({ events, total }))
        const there = ends(interval({ events: total - events, total }))
        expect(1 - there.high).toBeCloseTo(here.low, 12)
        expect(1 - there.low).toBeCloseTo(here.high, 12)
      }),
    )
  })

  it('is wider with more confidence', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const narrow = ends(interval(count, 0.9))
        const wide = ends(interval(count, 0.99))
        return wide.low <= narrow.low && wide.high >= narrow.high
      }),
    )
  })
})

describe('the exact interval', () => {
  it('covers the true share at least as often as it claims, for every share tried', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 99 }), (total, percent) => {
        const truth = percent / 100
        let covered = 0
        for (let events = 0; events <= total; events += 1) {
          const { low, high } = ends(exactInterval({ events, total }))
          if (low <= truth && truth <= high) covered += chanceOf(events, total, truth)
        }
        expect(covered).toBeGreaterThanOrEqual(0.95 - 1e-12)
      }),
    )
  })

  it('reaches higher than the one-sided bound', () => {
    fc.assert(
      fc.property(counts, (count) => {
        const bound = upperBound(count)
        return bound.kind === 'answer' && bound.answer <= ends(exactInterval(count)).high
      }),
    )
  })
})

function chanceOf(events: number, total: number, truth: number): number {
  const logWays = logGamma(total + 1) - logGamma(events + 1) - logGamma(total - events + 1)
  return Math.exp(logWays + events * Math.log(truth) + (total - events) * Math.log1p(-truth))
}
