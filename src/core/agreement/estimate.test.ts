import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { type Estimate, estimateFaults, faultsOf, totalsOf } from './estimate.ts'

const gbp = (amount: string) => ({ amount, currency: 'GBP' })
const line = (low: string, high: string) => ({ part: 'other', what: 'x', low: gbp(low), high: gbp(high) }) as const
const { example } = estimate
const of = (change: Partial<Estimate>): Estimate => ({ ...example, ...change })

describe('the totals of an estimate', () => {
  it('are exact sums of the lines, with the places they were written in', () => {
    expect(totalsOf(example)).toEqual({ kind: 'answer', answer: { low: gbp('2040.50'), high: gbp('2610.75') } })
    // 0.1 + 0.2 is 0.3 here, and 0.30000000000000004 in binary.
    expect(totalsOf(of({ lines: [line('0.1', '0.10'), line('0.2', '0.20')] }))).toMatchObject({
      answer: { low: gbp('0.3'), high: gbp('0.30') },
    })
  })

  it('are the sum of the pennies, whatever the lines', () => {
    const pennies = fc.array(fc.nat(10_000_000), { minLength: 1, maxLength: 12 })
    const pounds = (value: number) => `${Math.floor(value / 100)}.${String(value % 100).padStart(2, '0')}`
    fc.assert(
      fc.property(pennies, (values) => {
        const lines = values.map((value) => line(pounds(value), pounds(value)))
        const total = values.reduce((sum, value) => sum + value, 0)
        expect(totalsOf(of({ lines }))).toMatchObject({ answer: { low: gbp(pounds(total)) } })
      }),
    )
  })

  it('do not exist in two currencies', () => {
    const euros = { ...line('1', '2'), high: { amount: '2', currency: 'EUR' } }
    expect(totalsOf(of({ lines: [euros] }))).toEqual({ kind: 'refusal', refusal: 'mixed-currencies' })
    expect(faultsOf(of({ lines: [euros] }))).toEqual(['mixed-currencies'])
    expect(faultsOf(of({ deposit: { amount: '5', currency: 'EUR' } }))).toEqual(['mixed-currencies'])
  })
})

describe('an estimate', () => {
  it('is warned of when its ceiling lies under what it is expected to cost at least', () => {
    expect(faultsOf(example)).toEqual([])
    expect(faultsOf(of({ ceiling: gbp('2040.50') }))).toEqual([])
    expect(faultsOf(of({ ceiling: gbp('2040.49') }))).toEqual(['ceiling-under-low'])
  })

  it('is warned of when a line stands upside down or the deposit is more than may be spent', () => {
    expect(faultsOf(of({ lines: [line('20', '10')] }))).toEqual(['low-over-high'])
    expect(faultsOf(of({ deposit: gbp('3000.01') }))).toEqual(['deposit-over-ceiling'])
  })

  it('has words for every warning', () => {
    const codes: Readonly<Record<string, string>> = chaptersInEnglish.codes
    expect(estimateFaults.filter((fault) => !codes[fault])).toEqual([])
  })

  it('is accepted only by somebody, at a moment, in so many words', () => {
    const by = { by: 'contact-1', on: { at: '2026-03-01T10:00:00.000Z', zone: 'UTC', precision: 'day', by: 'person' } }
    expect(estimate.body.safeParse(of({ answer: null })).success).toBe(true)
    expect(estimate.body.safeParse({ ...example, answer: { said: 'accepted', ...by } }).success).toBe(true)
    expect(estimate.body.safeParse({ ...example, answer: { said: 'accepted', by: 'contact-1' } }).success).toBe(false)
    expect(estimate.body.safeParse({ ...example, answer: by }).success).toBe(false)
  })

  it('of one edition stands once: two live ones are a conflict', () => {
    const subject = { kind: 'animal', animal: 'animal-1' } as const
    const key = (edition: number) => estimate.naturalKey?.(of({ edition }), subject)
    expect(key(1)).toBe(key(1))
    expect(key(1)).not.toBe(key(2))
  })
})
