import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { type DoseRow, type Drug, drug, drugById, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'
import { findRow, nearNames } from './row.ts'

const known = {
  sources: ['invented'],
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
} as const
const row = (more: Partial<DoseRow>): DoseRow => ({
  species: 'dog',
  use: 'premed',
  routes: ['IM'],
  range: { value: range('1', '2', 'mg/kg'), ...known },
  interval: { value: { words: 'once' }, ...known },
  stocks: { value: [], ...known },
  cautions: { value: [], ...known },
  exclusions: { value: [], ...known },
  ...more,
})

/** Invented: no number here is a dose of anything. */
const exampline: Drug = drug({
  id: 'exampline',
  name: 'exampline',
  aliases: ['Examplin'],
  class: 'invented',
  groups: [],
  doses: [
    row({}),
    row({ formulation: 'strong' }),
    row({ use: 'sedation', qualifier: 'A' }),
    row({ use: 'sedation', qualifier: 'B' }),
  ],
  none: [{ species: 'cat', why: 'no-dose-found', because: 'nobody looked', ...known }],
})
const line = (more: object) => ({ id: 'l', drug: 'exampline', use: 'premed' as const, ...more })
const codeOf = (more: object, species: 'dog' | 'cat' = 'dog') => {
  const found = findRow(exampline, species, line(more), undefined)
  return found.kind === 'refusal' ? found.refusal.finding.code : 'answer'
}

describe('the row that a line means', () => {
  it('is never another formulation by accident', () => {
    expect(codeOf({})).toBe('answer')
    expect(codeOf({ formulation: 'strong' })).toBe('answer')
    expect(codeOf({ formulation: 'stronger' })).toBe('route-not-listed')
    const found = findRow(exampline, 'dog', line({}), undefined)
    expect(found.kind === 'answer' && found.answer.formulation).toBeUndefined()
  })

  it('has to be told apart by its bracket', () => {
    expect(codeOf({ use: 'sedation' })).toBe('row-ambiguous')
    expect(codeOf({ use: 'sedation', qualifier: 'B' })).toBe('answer')
  })

  it('is refused for a species without a dose, with the reason on record', () => {
    expect(codeOf({}, 'cat')).toBe('no-dose-for-species')
  })

  it('is refused for a dose of another kind', () => {
    const found = findRow(exampline, 'dog', line({}), quantity('1', 'mg/{animal}'))
    expect(found.kind === 'refusal' && found.refusal.finding.code).toBe('dose-unit-not-listed')
  })
})

describe('a drug’s name', () => {
  it('is found by id or alias, whatever the letters’ size', () => {
    expect(drugById([exampline], ' EXAMPLIN ')?.id).toBe('exampline')
    expect(drugById([exampline], 'exampl')).toBeUndefined()
  })

  it('is offered when nearly right, never picked', () => {
    expect(nearNames(formulary, 'metadone')).toEqual(['methadone'])
    expect(nearNames(formulary, 'dexametasone')).toContain('dexamethasone')
    expect(nearNames(formulary, 'xyz')).toEqual([])
  })
})

describe('a drug of the formulary', () => {
  it('cannot be written with a range that runs backwards', () => {
    const backwards = row({ range: { value: range('2', '1', 'mg/kg'), ...known } })
    expect(() => drug({ ...exampline, doses: [backwards] })).toThrow('runs backwards')
  })
})
