import { describe, expect, it } from 'vitest'
import { labelBands } from '#content/protocols/label-bands.ts'
import { range } from '#core/formulary/drug.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'
import { inWords, sayContent, sayFact } from './say-content.ts'
import { sayCumulative, sayMaximum, sayStock, sayTablet, sayWhen } from './say-drug.ts'
import { sayInterval, sayPerHundred } from './say-study.ts'

describe('content in words', () => {
  it('says quantities with their unit, ranges once when both ends are the same', () => {
    expect(sayContent(quantity('0.50', 'mg/kg'))).toBe('0.5 mg/kg')
    expect(sayContent(range('1', '2', 'ug/kg'))).toBe('1 to 2 microgram/kg')
    expect(sayContent(range('1', '1', 'mg/kg'))).toBe('1 mg/kg')
    expect(sayContent({ ...range('1', '2', 'mg/kg'), words: 'older page' })).toBe('1 to 2 mg/kg (older page)')
  })

  it('says periods as people do', () => {
    const days = (count: number) => ({ count, unit: 'days' })
    expect(sayContent({ from: days(10), until: days(14) })).toBe('10 to 14 days')
    expect(sayContent({ from: days(1), until: days(1) })).toBe('1 day')
    expect(sayContent({ from: { count: 24, unit: 'hours' }, until: days(3) })).toBe('24 hours to 3 days')
  })

  it('says records, lists, decimals and nothing', () => {
    expect(sayContent({ maxSingle: new Decimal('2.50'), of: ['a', 'b'] })).toBe('max single: 2.5; of: a, b')
    expect(sayContent([])).toBe('none')
    expect(sayContent(null)).toBe('none')
    expect(inWords('local_block')).toBe('local block')
  })

  it('says a fact by its value, or by what it says itself without the facts inside it', () => {
    expect(sayFact(labelBands['meloxicam 1 mg'][0])).toBe('from kg: 4.0; to kg: 7.0; tablets: 0.5')
    const known = {
      sources: ['a'],
      known: 'read',
      strength: 'label',
      confidence: 'high',
      checked: '2026-11-25',
    } as const
    const inner = { value: quantity('6', 'h'), ...known }
    expect(sayFact({ because: 'both harm the kidney', washouts: [inner], ...known })).toBe(
      'because: both harm the kidney',
    )
    expect(sayFact(known)).toBe('')
  })
})

describe('a row of the formulary in words', () => {
  it('says when a caution applies, for every kind of condition', () => {
    expect(sayWhen(undefined)).toBe('')
    expect(sayWhen({ kind: 'any-of', words: ['sepsis', 'shock'] })).toBe('when: sepsis or shock')
    expect(sayWhen({ kind: 'all-of', words: ['boxer', 'shock'] })).toBe('when all of: Boxer and shock')
    expect(sayWhen({ kind: 'lighter-than', weight: quantity('2.5', 'kg') })).toBe('when lighter than 2.5 kg')
    expect(sayWhen({ kind: 'younger-than', months: 6, only: 'giant-breed' })).toBe(
      'when younger than 6 months (giant breed)',
    )
    expect(sayWhen({ kind: 'given-within', drug: 'atropine', time: quantity('30', 'min') })).toBe(
      'when atropine was given within 30 min',
    )
    expect(sayWhen({ kind: 'given-at-least', drug: 'ketamine', dose: quantity('5', 'mg/kg') })).toBe(
      'when 5 mg/kg or more of ketamine was given',
    )
  })

  it('says limits and products with what qualifies them, and never invents a strength', () => {
    expect(sayMaximum({ limit: quantity('200', 'mg'), words: 'never more' })).toBe('200 mg (never more)')
    expect(sayCumulative({ per: 'day', words: 'in words only' })).toBe('per day (in words only)')
    expect(sayCumulative({ limit: quantity('5', 'mg/kg'), per: 'course', words: '' })).toBe('5 mg/kg per course')
    expect(sayStock({ words: 'powder' })).toBe('powder')
    expect(sayTablet({ strength: quantity('1', 'mg'), divides: 'unknown' })).toBe(
      '1 mg, whether it may be divided is unknown',
    )
  })
})

describe('a count in words', () => {
  it('is out of 100 with one digit', () => {
    expect(sayPerHundred(81 / 309)).toBe('26.2')
    expect(sayInterval({ low: 0.2144, high: 0.3149 })).toBe('21.4 to 31.5')
  })
})
