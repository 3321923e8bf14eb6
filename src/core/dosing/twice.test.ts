import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { Given, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const now = Temporal.Instant.from('2026-11-25T12:00:00Z')

/** A dog of 40 kg: what is found on the first line. */
function found(lines: readonly Omit<PlannedLine, 'id'>[], given: readonly Given[] = []): string[] {
  const animal = { species: 'dog', weight: quantity('40', 'kg'), conditions: [] } as const
  const asked = lines.map((line, place) => ({ ...line, id: `l${place}` }))
  const [first] = doseLines({ animal, given, at: now, lines: asked }, knowledge).lines
  return first?.findings.map(({ level, code }) => `${level} ${code}`) ?? []
}

const acepromazine = {
  drug: 'acepromazine',
  use: 'premed',
  route: 'IM',
  dose: quantity('0.05', 'mg/kg'),
  stock: quantity('10', 'mg/mL'),
} as const
const methadone = { drug: 'methadone', use: 'analgesia_bolus', route: 'IM', dose: quantity('0.2', 'mg/kg') } as const

describe('the same drug twice for one use', () => {
  it('is said, though each line is inside its range', () => {
    expect(found([methadone, { ...methadone, route: 'IV' }])).toContain('note same-drug-twice')
    expect(found([methadone]).join()).not.toContain('twice')
  })

  it('asks for a person when both together pass the most of one dose (acepromazine, 3 mg in a dog)', () => {
    expect(found([acepromazine])).toEqual([])
    expect(found([acepromazine, acepromazine])).toContain('confirm same-drug-twice-over-maximum')
    const half = { ...acepromazine, dose: quantity('0.03', 'mg/kg') }
    expect(found([half, half])).toContain('note same-drug-twice')
  })

  it('remembers for a day what was given, when the row has no gap of hours', () => {
    const given = (hours: number): Given => ({
      drug: 'acepromazine',
      amount: quantity('2', 'mg'),
      at: now.subtract({ minutes: hours * 60 }),
    })
    expect(found([acepromazine], [given(1)])).toContain('confirm same-drug-twice-over-maximum')
    expect(found([acepromazine], [given(24)])).toEqual([])
  })

  it('asks for a person when two infusions together pass the most of an hour (potassium, 0.5 mmol/kg/h)', () => {
    const bag = { drug: 'potassium-chloride', use: 'fluid', stock: quantity('0.04', 'mmol/mL') } as const
    const one = { ...bag, dose: quantity('0.3', 'mmol/kg/h') }
    expect(found([one, one])).toContain('confirm same-drug-twice-over-maximum')
    const half = { ...bag, dose: quantity('0.2', 'mmol/kg/h') }
    expect(found([half, half])).toContain('note same-drug-twice')
    expect(found([one]).join()).not.toContain('twice')
  })

  it('leaves alone what is meant more than once: blocks, another use', () => {
    const block = {
      drug: 'bupivacaine',
      use: 'local_block',
      route: 'perineural',
      dose: quantity('1', 'mg/kg'),
    } as const
    expect(found([block, block]).join()).not.toContain('twice')
    const ketamine = { drug: 'ketamine', route: 'IV' } as const
    const load = { ...ketamine, use: 'analgesia_bolus', dose: quantity('0.5', 'mg/kg') } as const
    expect(found([load, { ...ketamine, use: 'induction', dose: quantity('5', 'mg/kg') }]).join()).not.toContain('twice')
  })
})
