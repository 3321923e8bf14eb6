import { describe, expect, it } from 'vitest'
import { estimateSoFar } from './estimate-so-far.ts'

const place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' } as const
const gbp = (amount: string) => ({ amount, currency: 'GBP' })

describe('an estimate while it is typed', () => {
  it('has no sum before one line has both prices', () => {
    expect(estimateSoFar({ lines: [{ low: '10', high: '' }] }, place)).toBeNull()
    expect(estimateSoFar('', place)).toBeNull()
  })

  it('is summed exactly, in the currency of the house, and says how many lines are still open', () => {
    const lines = [
      { low: '0.10', high: '1800' },
      { low: '0.20', high: '240.50' },
      { low: '10', high: 'about 20' },
    ]
    expect(estimateSoFar({ lines, ceiling: '3000' }, place)).toEqual({
      totals: { low: gbp('0.30'), high: gbp('2040.50') },
      open: 1,
      ceiling: gbp('3000'),
    })
  })

  it('has no sum of two currencies', () => {
    const lines = [
      { low: '10', high: '20' },
      { low: '10 EUR', high: '20 EUR' },
    ]
    expect(estimateSoFar({ lines, ceiling: '' }, place)).toEqual({ totals: null, open: 0, ceiling: null })
  })
})
