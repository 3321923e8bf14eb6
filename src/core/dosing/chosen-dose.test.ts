import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DosePolicy, UsualPlan, UsualPlanLine } from './plan.ts'
import type { PlannedLine } from './request.ts'

const chosen = { reason: 'The house chose it.', person: 'person-surgeon', date: '2026-01-05' } as const
const methadone = { drug: 'methadone', use: 'analgesia_bolus' } as const
const policy = (dose: string, more: Partial<DosePolicy> = {}): DosePolicy => ({
  ...methadone,
  species: 'dog',
  dose: quantity(dose, 'mg/kg'),
  ...chosen,
  ...more,
})
const intoVein = policy('0.1', { route: 'IV' })
const intoMuscle = policy('0.5', { route: 'IM' })
const general = policy('0.2')

function answered(
  line: Partial<PlannedLine>,
  { policies = [], plans = [] }: { readonly policies?: readonly DosePolicy[]; readonly plans?: readonly UsualPlan[] },
  kind: 'dog' | 'cat' = 'dog',
) {
  const animal = { species: kind, weight: quantity('4', 'kg'), conditions: [] } as const
  const asked = { id: 'l1', ...methadone, ...line }
  const knowledge = { drugs: formulary, rules: dosingRules, plans, policies }
  const [one] = doseLines({ animal, given: [], lines: [asked] }, knowledge).lines
  return { dose: one?.dose?.toString(), codes: one?.findings.map(({ code }) => code), said: one?.findings[0]?.about }
}

describe('a dose that the house chose', () => {
  it('is never picked by its place in the list: two that fit are refused, both named', () => {
    for (const policies of [
      [intoVein, intoMuscle],
      [intoMuscle, intoVein],
    ]) {
      const { dose, codes, said } = answered({}, { policies })
      expect(dose).toBeUndefined()
      expect(codes).toContain('choice-ambiguous')
      expect(said?.choices).toContain('0.1 mg/kg (IV)')
      expect(said?.choices).toContain('0.5 mg/kg (IM)')
    }
  })

  it('is the one that says as much as the line does, wherever it stands', () => {
    for (const policies of [
      [general, intoMuscle],
      [intoMuscle, general],
    ]) {
      expect(answered({ route: 'IM' }, { policies }).dose).toBe('0.5 mg/kg')
      expect(answered({ route: 'IV' }, { policies }).dose).toBe('0.2 mg/kg')
      expect(answered({}, { policies }).dose).toBe('0.2 mg/kg')
    }
  })

  it('is taken when two say the same', () => {
    expect(answered({}, { policies: [general, { ...general, reason: 'Said again.' }] }).dose).toBe('0.2 mg/kg')
  })

  it('never reaches a formulation that the line does not name', () => {
    const strong = policy('0.24', {
      drug: 'buprenorphine',
      species: 'cat',
      route: 'SC',
      formulation: 'high concentration',
    })
    const plain = { drug: 'buprenorphine', use: 'analgesia_bolus' } as const
    expect(answered(plain, { policies: [strong] }, 'cat').codes).toContain('dose-not-chosen')
    const named = { ...plain, formulation: 'high concentration' }
    expect(answered(named, { policies: [strong] }, 'cat').dose).toBe('0.24 mg/kg')
  })
})

describe('a usual plan', () => {
  const block = (id: string, dose: string): UsualPlanLine => ({
    id,
    drug: 'bupivacaine',
    use: 'local_block',
    dose: quantity(dose, 'mg/kg'),
    ...chosen,
  })
  const plan = (...lines: UsualPlanLine[]): UsualPlan => ({ name: 'ours', title: 'ours', species: 'dog', lines })
  const asked = { drug: 'bupivacaine', use: 'local_block', plan: 'ours' } as const

  it('with two lines of a drug gives the one that is named, and none when neither is', () => {
    const plans = [plan(block('nerve', '1'), block('splash', '2'))]
    expect(answered({ ...asked, id: 'splash' }, { plans }).dose).toBe('2 mg/kg')
    expect(answered({ ...asked, id: 'other' }, { plans }).codes).toContain('choice-ambiguous')
  })

  it('that stands twice under one name gives nothing', () => {
    const plans = [plan(block('nerve', '1')), plan(block('nerve', '2'))]
    expect(answered({ ...asked, id: 'nerve' }, { plans }).codes).toContain('choice-ambiguous')
  })
})
