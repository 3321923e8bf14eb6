import { describe, expect, it } from 'vitest'
import { exactInterval, jeffreysInterval, upperBound, wilsonInterval } from './proportion-interval.ts'

const methods = { exactInterval, wilsonInterval, jeffreysInterval }

describe.each(Object.entries(methods))('%s', (_, interval) => {
  it('is refused when nothing was counted yet, instead of saying 0 %', () => {
    expect(interval({ events: 0, total: 0 })).toEqual({ kind: 'refusal', refusal: { because: 'no-cases-yet' } })
  })

  it('begins at exactly 0 without an event and ends at exactly 1 when all had it', () => {
    for (const total of [1, 5, 37, 289, 1_000_000]) {
      expect(interval({ events: 0, total })).toMatchObject({ answer: { low: 0 } })
      expect(interval({ events: total, total })).toMatchObject({ answer: { high: 1 } })
    }
  })

  it('does not accept a count that cannot be', () => {
    for (const [events, total] of [
      [3, 2],
      [-1, 5],
      [0.5, 5],
      [1, Number.NaN],
    ] as const) {
      expect(() => interval({ events, total })).toThrow('is not a count')
    }
  })

  it('does not accept a confidence given in percent', () => {
    expect(() => interval({ events: 1, total: 5 }, 95)).toThrow('between 0 and 1')
  })
})

describe('upperBound', () => {
  it('is refused when nothing was counted yet', () => {
    expect(upperBound({ events: 0, total: 0 })).toEqual({ kind: 'refusal', refusal: { because: 'no-cases-yet' } })
  })

  it('is 1 when all had the event', () => {
    expect(upperBound({ events: 4, total: 4 })).toEqual({ kind: 'answer', answer: 1 })
  })
})
