import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { type DoseRow, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import { mostOf, roundingCeiling } from './limits.ts'
import type { PlannedLine } from './request.ts'

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

describe('a day of a divided dose', () => {
  const lineOf = (drug: string, words: Partial<PlannedLine>) => {
    const animal = {
      species: words.id === 'cat' ? 'cat' : 'dog',
      weight: quantity('10', 'kg'),
      conditions: [],
    } as const
    const line = { id: 'l1', drug, use: 'nsaid', route: 'PO', ...words } as PlannedLine
    const { lines } = doseLines(
      { animal, given: [], lines: [line] },
      { drugs: formulary, rules: dosingRules, plans: [], policies: [] },
    )
    return lines[0]
  }
  const divided = { qualifier: 'divided', dose: quantity('2.2', 'mg/kg') } as const

  it('is not lifted over the daily maximum by rounding (carprofen 4.4 mg/kg a day, 21 CFR 522.304)', () => {
    // One whole 25 mg tablet twice a day would be 50 mg where the label's day ends at 44 mg.
    const tablet = { strength: quantity('25', 'mg'), divides: 'whole' } as const
    const line = lineOf('carprofen', { ...divided, tablet })
    expect(line?.verdict).toBe('refused')
    expect(line?.findings.map(({ code }) => code)).toContain('tablet-does-not-fit')
    const halves = lineOf('carprofen', { ...divided, tablet: { ...tablet, divides: 'halves' } })
    expect(halves?.verdict === 'caution' && halves.tablets?.each.toString()).toBe('0.5 {tablet}')
  })

  it('asks for the longer gap where the shorter would pass the day (doxycycline in cats, 10 mg/kg a day)', () => {
    const codes = (dose: string) =>
      lineOf('doxycycline', { id: 'cat', use: 'antibiotic_course', dose: quantity(dose, 'mg/kg') })?.findings.map(
        ({ code, level }) => `${level} ${code}`,
      )
    expect(codes('10')).toContain('confirm over-daily-maximum-at-shortest')
    expect(codes('5')).not.toContain('confirm over-daily-maximum-at-shortest')
  })
})
