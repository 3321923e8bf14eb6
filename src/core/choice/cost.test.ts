import { describe, expect, it } from 'vitest'
import { type CostLine, costOfYear } from './cost.ts'

const pounds = (amount: string) => ({ amount, currency: 'GBP' })
const line = (wanted: Partial<CostLine>): CostLine => ({
  what: 'Check of the ear',
  atLeast: 4,
  atMost: 8,
  every: 'year',
  price: { row: 'price-check', low: pounds('40.00'), high: pounds('60.10') },
  ...wanted,
})

describe('what a year of an option may cost', () => {
  it('is every price times how often, low and high, exactly', () => {
    expect(costOfYear([line({})])).toEqual({
      kind: 'answer',
      answer: {
        once: { low: pounds('160.00'), high: pounds('480.80') },
        month: null,
        year: { low: pounds('160.00'), high: pounds('480.80') },
      },
    })
  })

  it('holds twelve months of what comes every month, said apart', () => {
    const drops = line({
      what: 'Drops',
      every: 'month',
      atLeast: 1,
      atMost: 2,
      price: { row: 'price-drops', low: pounds('0.1'), high: pounds('0.2') },
    })
    // 12 × 0.1 is 1.2 and nothing beside it: no floating point.
    expect(costOfYear([line({}), drops])).toMatchObject({
      answer: {
        month: { low: pounds('0.10'), high: pounds('0.40') },
        year: { low: pounds('161.20'), high: pounds('485.60') },
      },
    })
  })

  it('is unknown while one price is missing, and says which', () => {
    expect(costOfYear([line({}), line({ what: 'Ear drops', price: null })])).toEqual({
      kind: 'refusal',
      refusal: { because: 'no-price', what: ['Ear drops'] },
    })
  })

  it('is refused with two currencies, with less at most than at least, and without a line', () => {
    const euros = { row: 'price-scan', low: { amount: '1', currency: 'EUR' }, high: { amount: '2', currency: 'EUR' } }
    expect(costOfYear([line({}), line({ price: euros })])).toMatchObject({ refusal: { because: 'mixed-currencies' } })
    expect(costOfYear([line({ atLeast: 9 })])).toMatchObject({ refusal: { because: 'low-over-high' } })
    expect(costOfYear([])).toMatchObject({ refusal: { because: 'no-lines' } })
  })

  it('takes never for an answer: nought times at least is free of it', () => {
    expect(costOfYear([line({ atLeast: 0, atMost: 1 })])).toMatchObject({ answer: { year: { low: pounds('0.00') } } })
  })
})
