import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { Given } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function said(given: Given): string {
  const animal = { species: 'dog', weight: quantity('10', 'kg'), conditions: [] } as const
  const { findings } = doseLines({ animal, given: [given], lines: [] }, knowledge)
  return findings.map(({ level, code }) => `${level} ${code}`).join()
}

describe('a slip in what was given', () => {
  const bupivacaine = { drug: 'bupivacaine', amount: quantity('4', 'mL') } as const

  it('is asked about when per cent was written as milligrams: 0.5 % is 5 mg/mL', () => {
    expect(said({ ...bupivacaine, stock: quantity('0.5', 'mg/mL') })).toContain('confirm given-strength-doubted')
    expect(said({ ...bupivacaine, stock: quantity('5', 'mg/mL') })).not.toContain('doubted')
    expect(said({ ...bupivacaine, stock: quantity('1.25', 'mg/mL') })).not.toContain('doubted')
  })

  it('is asked about when the amount is a hundredth of any dose or less', () => {
    expect(said({ drug: 'bupivacaine', amount: quantity('0.02', 'mg') })).toContain('confirm given-amount-doubted')
    expect(said({ drug: 'bupivacaine', amount: quantity('2', 'mg') })).not.toContain('doubted')
    expect(said({ drug: 'dexmedetomidine', amount: quantity('0.02', 'mg') })).not.toContain('doubted')
  })
})
