import { describe, expect, it } from 'vitest'
import { type DoseRow, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'
import { mostOf, roundingCeiling } from './limits.ts'

const known = {
  sources: ['invented'],
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
} as const

/** Invented: no number here is a limit of anything. */
const row: DoseRow = {
  species: 'dog',
  use: 'nsaid',
  routes: ['PO'],
  range: { value: range('1', '2', 'mg/kg'), ...known },
  interval: { value: { words: 'once' }, ...known },
  maxSingle: { value: { limit: quantity('3', 'mg/kg') }, ...known },
  maxCumulative: { value: { limit: quantity('2.5', 'mg/kg'), per: 'day', words: '' }, ...known },
  stocks: { value: [], ...known },
  cautions: { value: [], ...known },
  exclusions: { value: [], ...known },
}
const dose = quantity('2', 'mg/kg')
const amount = quantity('20', 'mg')

describe('the most of one dose', () => {
  it('scales with the animal when written per kilogram', () => {
    expect(String(mostOf(row, dose, amount))).toBe('30 mg')
  })

  it('stays when written as an amount, whatever the animal weighs', () => {
    const flat = { ...row, maxSingle: { value: { limit: quantity('0.5', 'g') }, ...known } }
    expect(String(mostOf(flat, dose, amount))).toBe('500 mg')
  })

  it('is unknown when the row knows none, and a bug when its unit fits nothing', () => {
    const { maxSingle: _, ...without } = row
    expect(mostOf(without, dose, amount)).toBeUndefined()
    const wrong = { ...row, maxSingle: { value: { limit: quantity('1', 'mL') }, ...known } }
    expect(() => mostOf(wrong, dose, amount)).toThrow('cannot be held against')
  })
})

describe('the ceiling of rounding', () => {
  it('is the lower of the single and the daily maximum', () => {
    expect(String(roundingCeiling(row, dose, amount))).toBe('25 mg')
    const lower = { ...row, maxSingle: { value: { limit: quantity('2.2', 'mg/kg') }, ...known } }
    expect(String(roundingCeiling(lower, dose, amount))).toBe('22 mg')
  })
})
