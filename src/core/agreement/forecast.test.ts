import { describe, expect, it } from 'vitest'
import { costRules } from '#content/follow-up/cost-rules.ts'
import { type Cost, forecastOf } from './forecast.ts'

const gbp = (amount: string) => ({ amount, currency: 'GBP' })
const line = (part: Cost['part'], low: string, high: string) => ({ part, what: 'x', low: gbp(low), high: gbp(high) })
const lines = [line('theatre', '1000.00', '1200.00'), line('ward', '200.00', '400.00')]
const cost = (part: Cost['part'], amount: string, finished = false): Cost => ({ part, amount: gbp(amount), finished })
const of = (costs: readonly Cost[], ceiling = '2000.00') =>
  forecastOf({ lines, ceiling: gbp(ceiling) }, costs, costRules.askFrom.value)

describe('the forecast of a stay', () => {
  it('is the estimate before anything was spent', () => {
    expect(of([])).toEqual({
      kind: 'answer',
      answer: { spent: gbp('0.00'), low: gbp('1200.00'), high: gbp('1600.00'), nearness: 'within' },
    })
  })

  it('adds what is still to come to what was spent, to the penny', () => {
    const costs = [cost('theatre', '1100.10', true), cost('ward', '100.20')]
    expect(of(costs)).toMatchObject({
      answer: { spent: gbp('1200.30'), low: gbp('1300.10'), high: gbp('1500.10'), nearness: 'within' },
    })
  })

  it('counts what no line foresaw, and a part that cost more than its line', () => {
    const costs = [cost('complications', '50.00'), cost('ward', '500.00')]
    expect(of(costs)).toMatchObject({ answer: { low: gbp('1550.00'), high: gbp('1750.00') } })
  })

  it('asks before the ceiling is passed: at four fifths, when it may, when it will, and when it is', () => {
    const nearness = (amount: string, ceiling: string) => {
      const found = of([cost('theatre', amount, true), cost('ward', '0', true)], ceiling)
      return found.kind === 'answer' ? found.answer.nearness : found.refusal
    }
    expect(nearness('799.99', '1000')).toBe('within')
    expect(nearness('800.00', '1000')).toBe('ask')
    expect(nearness('1000.00', '1000')).toBe('ask')
    expect(nearness('1000.01', '1000')).toBe('passed')
    expect(of([], '1599.99')).toMatchObject({ answer: { nearness: 'may-pass' } })
    expect(of([], '1600.00')).toMatchObject({ answer: { nearness: 'within' } })
    expect(of([], '1199.99')).toMatchObject({ answer: { nearness: 'will-pass' } })
  })

  it('does not exist in two currencies', () => {
    const euros = { part: 'ward', amount: { amount: '1', currency: 'EUR' }, finished: false } as const
    expect(of([euros])).toEqual({ kind: 'refusal', refusal: 'mixed-currencies' })
  })
})
