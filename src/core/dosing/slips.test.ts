import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import type { Species } from '#core/animal/species.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DosedAnimal, PlannedLine } from './request.ts'
import type { Syringe } from './syringe.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function judged(
  species: Species,
  kg: string,
  line: Omit<PlannedLine, 'id'>,
  more: Partial<DosedAnimal> = {},
  syringes?: readonly Syringe[],
) {
  const animal = { species, weight: quantity(kg, 'kg'), conditions: [], ...more } as const
  const { lines, findings } = doseLines(
    { animal, given: [], lines: [{ id: 'l1', ...line }] },
    { ...knowledge, ...(syringes && { syringes }) },
  )
  const said = (all: readonly { level: string; code: string }[] = []) =>
    all.map(({ level, code }) => `${level} ${code}`)
  return { verdict: lines[0]?.verdict, line: said(lines[0]?.findings), animal: said(findings) }
}

const fentanyl = { drug: 'fentanyl', use: 'analgesia_bolus', route: 'IV', dose: quantity('5', 'ug/kg') } as const
const methadone = { drug: 'methadone', use: 'analgesia_bolus', route: 'IM', stock: quantity('10', 'mg/mL') } as const

describe('a slip of the unit (house rule: a hundredfold is a unit until shown otherwise)', () => {
  it('is refused downwards as well as upwards', () => {
    expect(judged('dog', '10', { ...methadone, dose: quantity('0.2', 'ug/kg') }).line).toContain(
      'block dose-unit-suspected-low',
    )
    expect(judged('dog', '10', { ...methadone, dose: quantity('0.05', 'mg/kg') }).line).toEqual([
      'note dose-below-range',
    ])
  })

  it('is seen in the strength: fentanyl is 50 ug/mL, not 50 mg/mL', () => {
    const slipped = judged('dog', '10', { ...fentanyl, stock: quantity('50', 'mg/mL') })
    expect(slipped.verdict).toBe('refused')
    expect(slipped.line).toEqual(['block strength-unit-suspected'])
    expect(judged('dog', '10', { ...fentanyl, stock: quantity('0.05', 'mg/mL') }).line).toEqual([])
    expect(judged('dog', '10', { ...fentanyl, stock: quantity('5', 'ug/mL') }).line).toContain(
      'confirm strength-not-listed',
    )
    expect(judged('dog', '10', { ...fentanyl, stock: quantity('10', 'ug/mL') }).line).toContain(
      'note strength-not-listed',
    )
  })
})

describe('a drug in a large bag (norepinephrine, product 1 mg/mL)', () => {
  const infusion = { drug: 'norepinephrine', use: 'vasopressor', dose: quantity('0.1', 'ug/kg/min') } as const
  const of = (line: Partial<PlannedLine>) =>
    judged('dog', '10', { ...infusion, over: quantity('60', 'min'), ...line }).line.filter((said) =>
      said.includes('strength'),
    )
  const mixed = { from: quantity('1', 'mg/mL'), product: quantity('4', 'mL'), final: quantity('500', 'mL') }

  it('is judged by what was mixed, when somebody says it: 4 mL in 500 mL are 8 ug/mL', () => {
    expect(of({ stock: quantity('8', 'ug/mL'), mixed })).toEqual([])
    expect(of({ mixed })).toEqual([])
    const animal = { species: 'dog', weight: quantity('10', 'kg'), conditions: [] } as const
    const line = { id: 'l1', ...infusion, over: quantity('60', 'min'), mixed }
    const [answer] = doseLines({ animal, given: [], lines: [line] }, knowledge).lines
    // 0.1 ug/kg/min × 10 kg × 60 ÷ 8 ug/mL.
    expect(answer?.verdict !== 'refused' && answer?.rate?.toString()).toBe('7.5 mL/h')
  })

  it('asks, and does not bar, while nobody says how it was mixed', () => {
    expect(of({ stock: quantity('8', 'ug/mL') })).toEqual(['confirm strength-not-listed'])
  })

  it('is still a slip where a unit or a decimal point alone would explain it', () => {
    const block = ['block strength-unit-suspected']
    expect(of({ stock: quantity('1', 'ug/mL') })).toEqual(block)
    expect(of({ stock: quantity('0.01', 'mg/mL') })).toEqual(block)
    expect(of({ stock: quantity('1000', 'mg/mL') })).toEqual(block)
    expect(of({ stock: quantity('150', 'mg/mL') })).toEqual(block)
    // A single dose runs from no bag: there a hundredfold stays a doubt.
    expect(judged('dog', '10', { ...fentanyl, stock: quantity('0.4', 'ug/mL') }).line).toContain(block[0])
  })

  it('is barred when what was mixed gives another strength than the one stated, or is no product itself', () => {
    expect(of({ stock: quantity('8', 'mg/mL'), mixed })).toContain('block strength-not-as-mixed')
    expect(of({ mixed: { ...mixed, from: quantity('1', 'ug/mL') } })).toContain('block strength-unit-suspected')
    expect(of({ mixed: { ...mixed, product: quantity('600', 'mL') } })).toContain('block strength-not-as-mixed')
  })
})

describe('a fentanyl patch (Merck opioid table: 25 ug/h from 2.5 to 10 kg, never cut)', () => {
  const patch = (kg: string, dose: string) =>
    judged('dog', kg, { drug: 'fentanyl', use: 'transdermal', route: 'TD', dose: quantity(dose, 'ug/kg/h') })

  it('is refused in a size that does not exist', () => {
    expect(patch('3', '5').line).toContain('block patch-not-a-size')
    expect(patch('5', '5').line).toEqual([])
  })

  it('asks for a person when it is not the usual one', () => {
    expect(patch('10', '5').line).toContain('confirm patch-not-usual')
    expect(patch('10', '2.5').line).toEqual([])
  })

  it('is never more than the cat’s largest', () => {
    const cat = (size: string) =>
      judged('cat', '12', { drug: 'fentanyl', use: 'transdermal', route: 'TD', dose: quantity(size, 'ug/h') })
    expect(cat('25').line).toEqual([])
    expect(cat('50').verdict).toBe('refused')
  })
})

describe('an age outside the ordinary (house rule: under 12 weeks, over 10 years)', () => {
  const at = (ageMonths: number) =>
    judged('dog', '10', { ...methadone, dose: quantity('0.2', 'mg/kg') }, { ageMonths }).animal
  it.each([
    [2, 'note age-very-young'],
    [121, 'note age-old'],
    [180, 'note age-old'],
  ])('is pointed out at %i months', (months, said) => {
    expect(at(months)).toContain(said)
  })

  it.each([3, 12, 120])('is not at %i months', (months) => {
    expect(at(months).filter((said) => said.includes('age-'))).toEqual(['note weight-age-unknown'])
  })
})

describe('rounding, by class of drug (house rule)', () => {
  const coarse = [{ holds: '3', mark: '0.1' }]

  it('is noted for an opioid from 5 % on, and refused beyond 10 %', () => {
    // 0.55 mg in 10 mg/mL are 0.055 mL: the mark gives 0.06 mL, 9 % more.
    const small = { ...methadone, dose: quantity('0.2', 'mg/kg') } as const
    expect(judged('dog', '2.75', small).line).toEqual(['note rounding-shifts-dose'])
    expect(judged('dog', '13', small, {}, coarse)).toMatchObject({
      verdict: 'refused',
      line: ['block rounding-shifts-dose'],
    })
  })

  it('is noted for a vasopressor from 2 % on, and asks for a person beyond 10 % for any other drug', () => {
    const ephedrine = { drug: 'ephedrine', use: 'vasopressor', route: 'IV', dose: quantity('0.1', 'mg/kg') } as const
    expect(judged('dog', '5.3', { ...ephedrine, stock: quantity('5', 'mg/mL') }).line).toEqual([
      'note rounding-shifts-dose',
    ])
    const maropitant = { drug: 'maropitant', use: 'antiemetic', route: 'SC', dose: quantity('1', 'mg/kg') } as const
    const drawn = judged('dog', '2.6', { ...maropitant, stock: quantity('10', 'mg/mL') }, {}, coarse)
    expect(drawn.line).toEqual(['confirm rounding-shifts-dose'])
    expect(judged('dog', '2.9', { ...maropitant, stock: quantity('10', 'mg/mL') }, {}, coarse).line).toEqual([])
  })
})

describe('the weight of a fat animal (14 kg at 9 of 9: 10 kg lean; opioids by infusion remembered)', () => {
  it('is lean for an opioid that runs in, and whole for one injection of it', () => {
    const fat = { bodyCondition: 9 }
    const rate = {
      drug: 'fentanyl',
      use: 'cri',
      route: 'IV',
      dose: quantity('5', 'ug/kg/h'),
      over: quantity('60', 'min'),
    } as const
    expect(judged('dog', '14', { ...rate, stock: quantity('50', 'ug/mL') }, fat).line).toContain(
      'note lean-weight-used',
    )
    expect(judged('dog', '14', { ...fentanyl, stock: quantity('50', 'ug/mL') }, fat).line).toEqual([])
  })
})

describe('a label in per cent (1 % holds 10 mg/mL)', () => {
  const lidocaine = {
    drug: 'lidocaine',
    use: 'local_block',
    route: 'perineural',
    dose: quantity('2', 'mg/kg'),
  } as const
  const bupivacaine = { ...lidocaine, drug: 'bupivacaine', dose: quantity('1', 'mg/kg') } as const

  it('written as milligrams asks for a person: 2 % is 20 mg/mL, 0.5 % is 5 mg/mL', () => {
    for (const line of [
      { ...lidocaine, stock: quantity('2', 'mg/mL') },
      { ...bupivacaine, stock: quantity('0.5', 'mg/mL') },
      { ...bupivacaine, stock: quantity('0.75', 'mg/mL') },
    ]) {
      expect(judged('dog', '8', line).line).toContain('confirm strength-percent-suspected')
    }
    expect(judged('dog', '8', { ...bupivacaine, stock: quantity('50', 'mg/mL') }).line).toContain(
      'confirm strength-not-listed',
    )
    expect(judged('dog', '8', { ...bupivacaine, stock: quantity('5', 'mg/mL') }).line).toEqual([])
  })
})

describe('the hour taken for the minute (the commonest slip of an infusion is sixtyfold)', () => {
  const dopamine = { drug: 'dopamine', use: 'vasopressor', route: 'IV', stock: quantity('40', 'mg/mL') } as const
  const fentanylRun = { drug: 'fentanyl', use: 'cri', route: 'IV', stock: quantity('50', 'ug/mL') } as const

  it('is refused both ways when the number is that of the range', () => {
    expect(judged('dog', '8', { ...dopamine, dose: quantity('10', 'ug/kg/h') }).line).toContain(
      'block dose-time-suspected',
    )
    expect(judged('dog', '8', { ...fentanylRun, dose: quantity('5', 'ug/kg/min') }).line).toContain(
      'block dose-time-suspected',
    )
  })

  it('is no slip when the dose itself lies in the range', () => {
    expect(judged('dog', '8', { ...dopamine, dose: quantity('600', 'ug/kg/h') }).line.join()).not.toContain('suspected')
    expect(judged('dog', '8', { ...fentanylRun, dose: quantity('0.1', 'ug/kg/min') }).line.join()).not.toContain(
      'suspected',
    )
  })
})
