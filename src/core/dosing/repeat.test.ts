import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DosedAnimal, Given, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const now = Temporal.Instant.from('2026-11-25T12:00:00Z')
const before = (hours: number) => now.subtract({ minutes: Math.round(hours * 60) })

function found(animal: Partial<DosedAnimal>, given: Given, line: Omit<PlannedLine, 'id'>) {
  const whole = { species: 'cat', weight: quantity('4', 'kg'), conditions: [], ...animal } as const
  const [answer] = doseLines(
    { animal: whole, given: [given], at: now, lines: [{ id: 'l1', ...line }] },
    knowledge,
  ).lines
  return answer?.findings.map(({ level, code }) => `${level} ${code}`) ?? []
}

describe('the same drug again too soon', () => {
  const robenacoxib = { drug: 'robenacoxib', use: 'nsaid', route: 'SC', dose: quantity('2', 'mg/kg') } as const
  const given = (drug: string, hours: number): Given => ({ drug, amount: quantity('8', 'mg'), at: before(hours) })

  it('is refused for an NSAID (robenacoxib every 24 h, 21 CFR 522.2075)', () => {
    expect(found({}, given('robenacoxib', 8), robenacoxib)).toContain('block repeat-too-soon')
    expect(found({}, given('robenacoxib', 24), robenacoxib)).not.toContain('block repeat-too-soon')
  })

  it('asks for a person early in the gap of an opioid, and notes it later (methadone every 4 to 6 h, Merck table)', () => {
    const methadone = {
      drug: 'methadone',
      use: 'analgesia_bolus',
      route: 'IM',
      dose: quantity('0.2', 'mg/kg'),
    } as const
    expect(found({}, given('methadone', 1), methadone)).toContain('confirm repeat-too-soon')
    expect(found({}, given('methadone', 3), methadone)).toContain('note repeat-too-soon')
    expect(found({}, given('methadone', 4), methadone).join()).not.toContain('repeat-too-soon')
  })
})

describe('an NSAID more often than its label says (meloxicam every 24 h, 21 CFR 520.1367)', () => {
  const dog = { species: 'dog', weight: quantity('10', 'kg') } as const
  const meloxicam = {
    drug: 'meloxicam',
    use: 'nsaid',
    route: 'PO',
    qualifier: 'from day 2',
    dose: quantity('0.1', 'mg/kg'),
  } as const

  it('is refused, however it was chosen; a longer gap asks for a person', () => {
    const every = (hours: string) => found(dog, { drug: 'water' }, { ...meloxicam, every: quantity(hours, 'h') })
    expect(every('6')).toContain('block interval-too-short')
    expect(every('12')).toContain('block interval-too-short')
    expect(every('24').join()).not.toContain('interval')
    expect(every('48')).toContain('confirm interval-other')
  })

  it('is refused where "today" may have been just now, or the clock is wrong', () => {
    const later = { drug: 'meloxicam', amount: quantity('1', 'mg'), at: now.add({ hours: 2 }) }
    expect(found(dog, later, meloxicam)).toContain('block repeat-from-later')
    expect(found(dog, { ...later, isCoarse: true }, meloxicam)).toContain('block repeat-from-later')
  })
})

describe('another drug whose record says only the day', () => {
  it('asks for a person, because it may have been just now', () => {
    const gabapentin = { drug: 'gabapentin', use: 'analgesia_oral', route: 'PO', dose: quantity('8', 'mg/kg') } as const
    const today = { drug: 'gabapentin', at: now.add({ hours: 11 }), isCoarse: true } as const
    expect(found({}, today, gabapentin)).toContain('confirm repeat-from-later')
    // With a clock it is said once for the whole request.
    expect(found({}, { ...today, isCoarse: false }, gabapentin).join()).not.toContain('repeat-from-later')
  })
})

describe('a course longer than its source knows (meloxicam by mouth in cats: 4 days after surgery, EU label)', () => {
  it('asks for a person', () => {
    const meloxicam = { drug: 'meloxicam', use: 'nsaid', route: 'PO', dose: quantity('0.05', 'mg/kg') } as const
    const forDays = (days: number) => found({}, { drug: 'water' }, { ...meloxicam, days })
    expect(forDays(14)).toContain('confirm course-too-long')
    expect(forDays(4).join()).not.toContain('course-too-long')
  })
})

describe('trazodone in a dog (300 mg and 10 mg/kg in one dose, remembered)', () => {
  it('stops at the lower of its two limits', () => {
    const asked = (kg: string, dose: string) =>
      found(
        { species: 'dog', weight: quantity(kg, 'kg') },
        { drug: 'water' },
        { drug: 'trazodone', use: 'anxiolytic', dose: quantity(dose, 'mg/kg') },
      )
    expect(asked('10', '10').join()).not.toContain('over-single-maximum')
    expect(asked('10', '10.1')).toContain('block over-single-maximum')
    expect(asked('50', '6').join()).not.toContain('over-single-maximum')
    expect(asked('50', '7')).toContain('block over-single-maximum')
  })
})

describe('bupivacaine through a wound catheter', () => {
  it('asks for a person above the house mark of 5 mg/kg in 24 h, and refuses nobody for it', () => {
    const asked = (hours: string) =>
      found(
        { species: 'dog', weight: quantity('10', 'kg') },
        { drug: 'water' },
        { drug: 'bupivacaine', use: 'wound_infusion', dose: quantity('0.21', 'mg/kg/h'), over: quantity(hours, 'min') },
      )
    expect(asked('1440')).toContain('confirm over-daily-maximum')
    expect(asked('1380').join()).not.toContain('over-daily-maximum')
  })
})

describe('something given after the time of the plan', () => {
  const said = (given: Given) =>
    doseLines(
      { animal: { species: 'cat', weight: quantity('4', 'kg'), conditions: [] }, given: [given], at: now, lines: [] },
      knowledge,
    ).findings.map(({ level, code }) => `${level} ${code}`)

  it('is said, unless only its day is known', () => {
    const given = { drug: 'methadone', amount: quantity('1', 'mg'), at: now.add({ seconds: 1 }) }
    expect(said(given)).toContain('confirm given-from-later')
    expect(said({ ...given, at: now }).join()).not.toContain('given-from-later')
    expect(said({ ...given, isCoarse: true }).join()).not.toContain('given-from-later')
  })
})

describe('cefovecin in a cat (21 CFR 522.311: once; it acts for 14 days)', () => {
  it('is asked about when it is planned again within them', () => {
    const line = { drug: 'cefovecin', use: 'antibiotic_course', route: 'SC', dose: quantity('8', 'mg/kg') } as const
    const given = (days: number) => ({ drug: 'cefovecin', amount: quantity('32', 'mg'), at: before(days * 24) })
    expect(found({}, given(1), line)).toContain('confirm repeat-too-soon')
    expect(found({}, given(14), line).join()).not.toContain('repeat-too-soon')
  })
})

describe('meloxicam in a cat after the larger injection (21 CFR 522.1367: once only, 0.3 mg/kg)', () => {
  const oral = { drug: 'meloxicam', use: 'nsaid', route: 'PO', dose: quantity('0.05', 'mg/kg') } as const
  const injection = (qualifier: string, mgPerKg: string) =>
    ({ drug: 'meloxicam', use: 'nsaid', route: 'SC', qualifier, dose: quantity(mgPerKg, 'mg/kg') }) as const
  const meloxicam = (mg: string, hours: number): Given => ({
    drug: 'meloxicam',
    amount: quantity(mg, 'mg'),
    at: before(hours),
  })

  it('is refused also when the syringe had rounded the injection down (1.2 mg in 4.1 kg is 0.293 mg/kg)', () => {
    expect(found({ weight: quantity('4.1', 'kg') }, meloxicam('1.2', 30), oral)).toContain('block excluded-by-given')
  })

  it('is refused also when the injection was dosed on the lean weight (8 kg, condition 9: 5.71 kg, 1.7 mg)', () => {
    const fat = { weight: quantity('8', 'kg'), bodyCondition: 9 }
    expect(found(fat, meloxicam('1.7', 30), oral)).toContain('block excluded-by-given')
  })

  it('goes on after 0.2 mg/kg, a day later', () => {
    expect(found({}, meloxicam('0.8', 24), oral).join()).not.toContain('block')
    expect(found({}, meloxicam('0.8', 3), oral)).toContain('block repeat-too-soon')
  })

  it('has no second injection, by either label', () => {
    expect(found({}, meloxicam('1.2', 48), injection('US label', '0.3'))).toContain('block excluded-by-given')
    expect(found({}, meloxicam('1.2', 48), injection('EU label', '0.2'))).toContain('block excluded-by-given')
    expect(found({}, meloxicam('0.8', 3), injection('EU label', '0.2'))).toContain('block excluded-by-given')
  })

  it('is given once on the first day in a dog too (0.2 mg/kg, 21 CFR 520.1367)', () => {
    const dayOne = {
      drug: 'meloxicam',
      use: 'nsaid',
      route: 'SC',
      qualifier: 'day 1',
      dose: quantity('0.2', 'mg/kg'),
    } as const
    const dog = { species: 'dog', weight: quantity('10', 'kg') } as const
    expect(found(dog, meloxicam('2', 6), dayOne)).toContain('block excluded-by-given')
  })
})

describe('chloramphenicol in a cat', () => {
  it('stops at the common cap of 50 mg per cat (remembered)', () => {
    const line = {
      drug: 'chloramphenicol',
      use: 'antibiotic_course',
      route: 'PO',
      dose: quantity('20', 'mg/kg'),
    } as const
    expect(found({}, { drug: 'water' }, line)).toContain('block over-single-maximum')
    expect(found({ weight: quantity('2.5', 'kg') }, { drug: 'water' }, line).join()).not.toContain('block')
  })
})
