import { expect, test } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseLines } from '#core/dosing/dose-lines.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import type { Dose, Stock } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'
import { lineSteps } from './line-steps.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function steps(lines: readonly PlannedLine[], kilograms = '20'): string[] {
  const animal = { species: 'dog', weight: quantity(kilograms, 'kg'), weightIs: 'measured', conditions: [] } as const
  const result = doseLines({ animal, given: [], lines }, knowledge)
  return result.lines.flatMap((line) => {
    if (line.verdict === 'refused') throw new Error(line.findings.map(({ code }) => code).join(', '))
    return lineSteps(line, lines)
  })
}

test('A syringe with its loading dose is made up step by step', () => {
  const ketamine: PlannedLine = {
    id: 'infusion',
    drug: 'ketamine',
    use: 'cri',
    route: 'IV',
    dose: quantity('10', 'ug/kg/min') as Dose,
    stock: quantity('100', 'mg/mL') as Stock,
    container: { kind: 'syringe', name: 'infusion', volume: quantity('50', 'mL'), rate: quantity('5', 'mL/h') },
    loading: { dose: quantity('0.5', 'mg/kg') as Dose, over: quantity('2', 'min') },
  }
  expect(steps([ketamine])).toEqual([
    'First, at once: 0.1 mL (10 mg). Pump: 3 mL/h.',
    'Draw 1.2 mL of ketamine 100 mg/mL: 120 mg.',
    'Draw 48.8 mL of fluid beside it: 50 mL in all.',
    'Label: ketamine 120 mg in 50 mL, 5 mL/h, for 10 h.',
    'The syringe is tied to 5 mL/h: another rate is another dose. Never give a bolus from it.',
  ])
})

test('A fluid says its hours, its drops and the loss that is made good', () => {
  const fluid: PlannedLine = {
    id: 'fluid',
    drug: 'balanced-crystalloid',
    use: 'fluid',
    route: 'IV',
    qualifier: 'under anaesthesia',
    dose: quantity('5', 'mL/kg/h') as Dose,
    over: quantity('120', 'min'),
    set: quantity('20', '[drp]/mL'),
  }
  // 5 mL/kg/h × 20 kg = 100 mL/h; a quarter less in the second hour; 100 × 20 ÷ 60 = 33.3 drops a minute.
  const said = steps([fluid])
  expect(said.join(' ')).toContain('hour 1 100 mL/h, hour 2 75 mL/h; 175 mL in all.')
  expect(said.join(' ')).toContain('33 drops a minute, which gives 99 mL/h.')
  expect(said.join(' ')).toContain('hour 1 33, hour 2 25.')
})

test('What is handed out is counted, and a line that is simply drawn has no step', () => {
  const tablets: PlannedLine = {
    id: 'home',
    drug: 'amoxicillin-clavulanate',
    use: 'antibiotic_course',
    route: 'PO',
    dose: quantity('12.5', 'mg/kg') as Dose,
    tablet: { strength: quantity('250', 'mg'), divides: 'halves' },
    days: 7,
  }
  const block: PlannedLine = {
    id: 'block',
    drug: 'bupivacaine',
    use: 'local_block',
    route: 'perineural',
    dose: quantity('1', 'mg/kg') as Dose,
    stock: quantity('5', 'mg/mL') as Stock,
  }
  expect(steps([tablets])).toEqual(['For 7 days: 14 doses, 14 tablets in all.'])
  expect(steps([block])).toEqual([])
})
