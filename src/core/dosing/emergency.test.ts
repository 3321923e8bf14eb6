import { describe, expect, it } from 'vitest'
import type { Provenance } from '#core/evidence/sourced.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'
import { type EmergencyFacts, emergencySheet } from './emergency.ts'
import { emergencyLine } from './emergency-line.ts'
import { type EmergencyRow, emergencyDose, emergencyStock } from './emergency-row.ts'

/** Every number here is invented. */
const invented: Provenance = {
  sources: ['invented'],
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
}
const exampline: EmergencyRow = {
  drug: 'exampline',
  name: 'Exampline',
  species: ['dog'],
  routes: ['IV'],
  dose: { value: emergencyDose('2', 'mg/kg'), ...invented },
  edition: 'first',
  reason: 'invented',
  otherEditions: [],
  stock: emergencyStock('100', 'mg/mL'),
  diluent: 'water',
  give: 'Once.',
}
const kg = (value: string) => quantity(value, 'kg')

function drawn(row: EmergencyRow, weight: string) {
  const line = emergencyLine(row, kg(weight), [])
  if (line.kind !== 'drawn') throw new Error(`${row.drug} is barred.`)
  return line
}

describe('a line of the emergency sheet', () => {
  it('is dose times weight, divided by the strength on the line', () => {
    const line = drawn(exampline, '7')
    expect([line.amount, line.volume, line.drawn, line.delivered].map(String)).toEqual([
      '14 mg',
      '0.14 mL',
      '0.14 mL',
      '2 mg/kg',
    ])
    expect(line.dilution).toBeUndefined()
  })

  it('is drawn undiluted at exactly 0.05 mL and from a tenfold dilution just below', () => {
    expect(drawn(exampline, '2.5').dilution).toBeUndefined()
    const below = drawn(exampline, '2.4')
    expect(below.dilution?.parts).toBe(10)
    expect([below.stock, below.volume].map(String)).toEqual(['10 mg/mL', '0.48 mL'])
  })

  it('stays undiluted and says so when the product must not be diluted', () => {
    const line = drawn({ ...exampline, diluent: null }, '2')
    expect([line.tooSmall, `${line.volume}`]).toEqual([true, '0.04 mL'])
  })

  it('is the volume itself when the dose is one', () => {
    const line = drawn({ ...exampline, dose: { value: emergencyDose('1.5', 'mL/kg'), ...invented }, stock: null }, '4')
    expect([`${line.volume}`, line.stock]).toEqual(['6 mL', null])
  })

  it('throws on a strength that cannot hold the dose: a mistake of content', () => {
    const wrong = { ...exampline, stock: emergencyStock('1', '[iU]/mL') }
    expect(() => emergencyLine(wrong, kg('7'), [])).toThrow('cannot be drawn')
  })

  it('runs an infusion after it, with an end or without one', () => {
    const open = { ...exampline, follow: { value: { rate: quantity('50', 'ug/kg/min') }, ...invented } }
    // 50 ug × 20 kg × 60 min = 60 mg an hour, at 100 mg/mL.
    expect(`${drawn(open, '20').follow?.rate}`).toBe('0.6 mL/h')
    const ends = { rate: quantity('0.25', 'mL/kg/min'), minutes: quantity('20', 'min') }
    expect(`${drawn({ ...exampline, follow: { value: ends, ...invented } }, '10').follow?.total}`).toBe('50 mL')
  })

  it('is barred only by what is suspected', () => {
    const row = { ...exampline, barredBy: 'local-anaesthetic-toxicity' } as const
    expect(emergencyLine(row, kg('7'), []).kind).toBe('drawn')
    expect(emergencyLine(row, kg('7'), ['local-anaesthetic-toxicity']).kind).toBe('barred')
  })
})

describe('the sheet of one animal', () => {
  const band = { value: { low: quantity('1', 'J/kg'), high: quantity('2', 'J/kg') }, ...invented }
  const perKg = { counted: quantity('50', 'mL/kg'), low: quantity('40', 'mL/kg'), high: quantity('60', 'mL/kg') }
  const plausible = {
    value: { usual: { low: kg('2'), high: kg('9') }, possible: { low: kg('1'), high: kg('20') } },
    ...invented,
  }
  const step = { value: 'Do it.', species: ['cat'], ...invented } as const
  const facts: EmergencyFacts = {
    groups: [{ call: 'no-pulse', steps: [step], rows: [exampline] }],
    bloodPerKg: { dog: { value: perKg, ...invented }, cat: { value: perKg, ...invented } },
    marks: [{ value: { fraction: '0.1', code: 'inform' }, ...invented }],
    energy: { external: { biphasic: band, monophasic: band }, internal: { biphasic: band, monophasic: band } },
    energyNotes: [],
    plausible: { dog: plausible, cat: plausible },
    lean: { value: { from: 7, sharePerPoint: new Decimal('0.1') }, ...invented },
  }
  const codes = (weight: string) => emergencySheet({ species: 'dog', weight: kg(weight) }, facts).findings

  it('holds only the rows and steps of its species', () => {
    const [dog] = emergencySheet({ species: 'dog', weight: kg('7') }, facts).groups
    const [cat] = emergencySheet({ species: 'cat', weight: kg('7') }, facts).groups
    expect([dog?.lines.length, dog?.steps.length, cat?.lines.length, cat?.steps.length]).toEqual([1, 0, 0, 1])
  })

  it('counts blood, marks and energies for the weight', () => {
    const sheet = emergencySheet({ species: 'dog', weight: kg('10') }, facts)
    expect(`${sheet.blood.counted}, ${sheet.lossAt[0]?.volume}, ${sheet.energy[0]?.high}`).toBe('500 mL, 50 mL, 20 J')
  })

  it('never stops at an odd weight: it only notes it', () => {
    expect(codes('9')).toEqual([])
    expect(codes('9.1')).toMatchObject([{ code: 'weight-unusual', level: 'note' }])
    expect(codes('21')).toMatchObject([{ code: 'weight-impossible', level: 'note' }])
    expect(codes('0.5')).toMatchObject([{ code: 'weight-impossible', level: 'note' }])
  })
})
