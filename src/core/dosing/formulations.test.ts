import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import type { Species } from '#core/animal/species.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function line(species: Species, words: Partial<PlannedLine>) {
  const animal = { species, weight: quantity('4', 'kg'), conditions: [] } as const
  const asked = { id: 'l1', drug: 'buprenorphine', use: 'analgesia_bolus', ...words } as PlannedLine
  const [answer] = doseLines({ animal, given: [], lines: [asked] }, knowledge).lines
  if (!answer) throw new Error('One line gives one answer.')
  return { verdict: answer.verdict, codes: answer.findings.map(({ code }) => code) }
}

const strong = quantity('1.8', 'mg/mL')
const weak = quantity('0.3', 'mg/mL')
const high = 'high concentration, 1.8 mg/mL'

describe('buprenorphine 0.3 and 1.8 mg/mL are never interchanged (21 CFR 522.230; data sheet of the 0.3 mg/mL product)', () => {
  it.each(['dog', 'cat'] as const)('refuses the strong product for the usual dose in a %s', (species) => {
    const { verdict, codes } = line(species, { route: 'IM', dose: quantity('20', 'ug/kg'), stock: strong })
    expect(verdict).toBe('refused')
    expect(codes).toContain('strength-of-other-formulation')
  })

  it('refuses the usual product for the dose of the strong one', () => {
    const words = { route: 'SC', formulation: high, dose: quantity('0.24', 'mg/kg') } as const
    expect(line('cat', { ...words, stock: weak }).codes).toContain('strength-of-other-formulation')
    expect(line('cat', { ...words, stock: strong }).verdict).not.toBe('refused')
  })

  it('has no row of the strong product for a dog', () => {
    const words = { route: 'SC', formulation: high, dose: quantity('0.24', 'mg/kg'), stock: strong } as const
    expect(line('dog', words).verdict).toBe('refused')
  })

  it('passes the usual product for the usual dose', () => {
    const usual = line('dog', { route: 'IM', dose: quantity('20', 'ug/kg'), stock: weak })
    expect(usual.verdict).not.toBe('refused')
  })
})
