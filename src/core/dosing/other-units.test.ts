import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import type { Species } from '#core/animal/species.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { Given, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function line(species: Species, kg: string, asked: Omit<PlannedLine, 'id'>, given: readonly Given[] = []) {
  const animal = { species, weight: quantity(kg, 'kg'), conditions: [] } as const
  const [one] = doseLines({ animal, given, lines: [{ id: 'l1', ...asked }] }, knowledge).lines
  if (!one) throw new Error('One line gives one answer.')
  const measured = one.verdict === 'refused' ? undefined : one
  return {
    verdict: one.verdict,
    amount: measured?.amount.toString(),
    volume: measured?.volume?.toString(),
    rate: measured?.rate?.toString(),
    codes: one.findings.map(({ code }) => code),
    about: one.findings.map(({ about }) => about),
    sources: one.findings.flatMap(({ sources }) => sources),
  }
}

describe('a dose that is not in milligrams', () => {
  it('is drawn in units: 0.8 units/kg of vasopressin is 0.04 mL/kg of 20 units/mL (Merck CPR table)', () => {
    const asked = { drug: 'vasopressin', use: 'emergency', dose: quantity('0.8', '[iU]/kg') } as const
    expect(line('dog', '10', { ...asked, stock: quantity('20', '[iU]/mL') })).toMatchObject({
      amount: '8 [iU]',
      volume: '0.4 mL',
    })
  })

  it('is refused from a bottle in other units a hundredfold off', () => {
    const asked = { drug: 'vasopressin', use: 'emergency', dose: quantity('0.8', '[iU]/kg') } as const
    expect(line('dog', '10', { ...asked, stock: quantity('2000', '[iU]/mL') }).codes).toContain(
      'strength-unit-suspected',
    )
    expect(line('dog', '10', { ...asked, stock: quantity('20', 'mg/mL') }).codes).toContain('strength-does-not-fit')
  })

  it('is drawn in millimoles: 1 mmol/kg of bicarbonate 8.4 % is 1 mL/kg (Merck CPR table, 1 mEq/mL)', () => {
    const asked = { drug: 'sodium-bicarbonate', use: 'emergency', dose: quantity('1', 'mmol/kg') } as const
    expect(line('cat', '4', { ...asked, stock: quantity('1', 'mmol/mL') })).toMatchObject({
      amount: '4 mmol',
      volume: '4 mL',
    })
  })

  it('is drawn in millilitres: 1.5 mL/kg of lipid, then 0.25 mL/kg/min (Caulfield 2022)', () => {
    const lipid = { drug: 'lipid-emulsion', use: 'emergency', dose: quantity('1.5', 'mL/kg') } as const
    expect(line('cat', '4', lipid)).toMatchObject({ verdict: 'ok', amount: '6 mL', volume: '6 mL' })
    const follow = { drug: 'lipid-emulsion', use: 'cri', dose: quantity('0.25', 'mL/kg/min') } as const
    expect(line('cat', '4', { ...follow, over: quantity('25', 'min') })).toMatchObject({ rate: '60 mL/h' })
  })

  it('is drawn in grams: 0.5 g/kg of glucose 50 % is 1 mL/kg', () => {
    const asked = { drug: 'glucose', use: 'emergency', dose: quantity('0.5', 'g/kg') } as const
    expect(line('dog', '3', { ...asked, stock: quantity('500', 'mg/mL') })).toMatchObject({ volume: '3 mL' })
  })

  it('runs as potassium by the hour, and never over 0.5 mmol/kg/h', () => {
    const asked = { drug: 'potassium-chloride', use: 'fluid', over: quantity('60', 'min') } as const
    const bag = quantity('0.04', 'mmol/mL')
    expect(line('dog', '10', { ...asked, dose: quantity('0.1', 'mmol/kg/h'), stock: bag })).toMatchObject({
      amount: '1 mmol/h',
      rate: '25 mL/h',
      verdict: 'ok',
    })
    expect(line('dog', '10', { ...asked, dose: quantity('0.6', 'mmol/kg/h') }).codes).toContain('over-single-maximum')
  })

  it('never lets the bottle of potassium run undiluted', () => {
    const asked = { drug: 'potassium-chloride', use: 'fluid', dose: quantity('0.1', 'mmol/kg/h') } as const
    const one = line('dog', '10', { ...asked, stock: quantity('2', 'mmol/mL'), over: quantity('60', 'min') })
    expect(one).toMatchObject({ verdict: 'refused', codes: ['strength-undiluted'] })
    expect(one.rate).toBeUndefined()
    const stronger = line('dog', '10', { ...asked, stock: quantity('3', 'mmol/mL') })
    expect(stronger.codes).toContain('strength-undiluted')
  })

  it.each([
    ['carbomer', 'eye', quantity('1', '[drp]/{eye}'), '1 [drp]/{eye}'],
    ['paraffin-eye-ointment', 'eye', quantity('0.5', 'cm/{eye}'), '0.5 cm/{eye}'],
    ['isoflurane', 'maintenance', quantity('1.5', '%{vol}'), '1.5 %{vol}'],
  ] as const)('is its own amount for %s', (drug, use, dose, amount) => {
    expect(line('cat', '4', { drug, use, dose })).toMatchObject({ verdict: 'ok', amount })
  })

  it('does not call a bolus of fluid a large injection', () => {
    const asked = { drug: 'balanced-crystalloid', use: 'fluid_bolus', dose: quantity('10', 'mL/kg') } as const
    expect(line('dog', '10', asked)).toMatchObject({ verdict: 'ok', volume: '100 mL' })
  })
})

describe('what is forbidden', () => {
  it.each([
    ['permethrin', 'antiparasitic'],
    ['paracetamol', 'analgesia_oral'],
    ['lidocaine', 'cri'],
  ] as const)('says why and from which source for %s in a cat', (drug, use) => {
    const { verdict, codes, about, sources } = line('cat', '4', { drug, use })
    expect(verdict).toBe('refused')
    expect(codes[0]).toBe('forbidden-for-species')
    expect(about[0]?.because).toMatch(/\w+ \w+/)
    expect(sources.length).toBeGreaterThan(0)
  })

  it('is a formulation too: the 1.8 mg/mL buprenorphine in a dog', () => {
    const asked = { drug: 'buprenorphine', use: 'analgesia_bolus', formulation: 'high concentration' } as const
    expect(line('dog', '10', asked).codes[0]).toBe('forbidden-for-species')
    expect(line('cat', '4', asked).codes).toContain('dose-not-chosen')
  })
})

describe('liposomal bupivacaine (21 CFR 522.224)', () => {
  const wound = { drug: 'bupivacaine', use: 'local_block', formulation: 'liposomal' } as const
  const stock = quantity('13.3', 'mg/mL')

  it('gives 5.3 mg/kg against a limit of its own', () => {
    const one = line('dog', '10', { ...wound, dose: quantity('5.3', 'mg/kg'), stock })
    expect(one).toMatchObject({ verdict: 'ok', amount: '53 mg' })
    expect(one.codes).not.toContain('local-anaesthetic-ceiling')
  })

  it('never passes for the usual product, nor the usual product for it', () => {
    const usual = { drug: 'bupivacaine', use: 'local_block', dose: quantity('2', 'mg/kg') } as const
    expect(line('dog', '10', { ...usual, stock }).codes).toContain('strength-of-other-formulation')
    const weak = { ...wound, dose: quantity('5.3', 'mg/kg'), stock: quantity('5', 'mg/mL') }
    expect(line('dog', '10', weak).codes).toContain('strength-of-other-formulation')
  })

  it('leaves no room for another local anaesthetic, for as long as it acts', () => {
    const given = [{ drug: 'bupivacaine', amount: quantity('53', 'mg'), stock }]
    const block = { drug: 'lidocaine', use: 'local_block', dose: quantity('1', 'mg/kg') } as const
    expect(line('dog', '10', block, given).codes).toContain('local-anaesthetic-ceiling')
  })

  it('is remembered by its name where nobody wrote the strength, for as long as it acts', () => {
    const at = Temporal.Instant.from('2026-11-25T12:00:00Z')
    const given = [
      { drug: 'bupivacaine (liposomal)', amount: quantity('53', 'mg'), at: at.subtract({ hours: 30 }) },
    ] as const
    const animal = { species: 'dog', weight: quantity('10', 'kg'), conditions: [] } as const
    const block = { id: 'l1', drug: 'lidocaine', use: 'local_block', dose: quantity('1', 'mg/kg') } as const
    const [one] = doseLines({ animal, given, at, lines: [block] }, knowledge).lines
    expect(one?.findings.map(({ code }) => code)).toContain('local-anaesthetic-ceiling')
  })
})

describe('a local anaesthetic that is no drug of ours (the names of all end in -caine)', () => {
  const block = { drug: 'lidocaine', use: 'local_block', dose: quantity('1', 'mg/kg') } as const
  const at = Temporal.Instant.from('2026-11-25T12:00:00Z')
  const codes = (drug: string, hours: number, more: Partial<Given> = {}) => {
    const given = [{ drug, amount: quantity('20', 'mg'), at: at.subtract({ hours }), ...more }]
    const animal = { species: 'dog', weight: quantity('10', 'kg'), conditions: [] } as const
    return doseLines({ animal, given, at, lines: [{ id: 'l1', ...block }] }, knowledge).lines[0]?.findings.map(
      ({ code }) => code,
    )
  }

  it('leaves no room under the ceiling, because nobody knows how much it takes', () => {
    for (const name of ['levobupivacaine', 'Marcaine', 'articaine 4 %']) {
      expect(codes(name, 1)).toContain('local-anaesthetic-uncounted')
    }
    expect(codes('levobupivacaine', 8)).not.toContain('local-anaesthetic-uncounted')
    expect(codes('proxymetacaine', 1, { route: 'topical-eye' })).not.toContain('local-anaesthetic-uncounted')
    expect(codes('dexamethasone', 1)).not.toContain('local-anaesthetic-uncounted')
  })
})
