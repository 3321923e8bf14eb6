import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import { emergencySheet } from './emergency.ts'
import { ownDefaultsOf, readSurfaceFactor, readSyringes, withOwn } from './own-defaults.ts'
import type { PlannedLine } from './request.ts'

const set = (...policies: readonly (readonly [string, string])[]) => {
  const make = entryMaker()
  return fold(
    policies.map(([policy, value]) =>
      make({
        kind: 'house-policy',
        at: '2026-02-01T10:00:00.000Z',
        body: { policy, value, because: 'Our meeting of February.' },
      }),
    ),
  )
}
const judge = (line: PlannedLine, house = set()) => {
  const base = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
  const knowledge = withOwn(
    base,
    ownDefaultsOf(house, dosingRules, new Map([['person-surgeon', { name: 'A. Person' }]])),
  )
  const animal = { species: 'cat', weight: quantity('8', 'kg'), conditions: [] } as const
  return doseLines({ animal: { ...animal, species: 'dog' }, given: [], lines: [line] }, knowledge)
}
const surface: PlannedLine = {
  id: 'd',
  drug: 'dexmedetomidine',
  use: 'premed',
  route: 'IM',
  dose: quantity('125', 'ug/m2'),
  stock: quantity('0.5', 'mg/mL'),
}
const drawn: PlannedLine = {
  id: 'm',
  drug: 'methadone',
  use: 'analgesia_bolus',
  route: 'IM',
  dose: quantity('0.23', 'mg/kg'),
  stock: quantity('10', 'mg/mL'),
}

describe('the factor of the surface', () => {
  it('is the house’s where it set one, and every dose by surface says so', () => {
    const [ours] = judge(surface).lines
    const [own] = judge(surface, set(['dose.surface-factor.dog', '0.104'])).lines
    // 8 kg to the power of two thirds is 4.
    expect(ours?.verdict !== 'refused' && ours?.bodySurface?.toString()).toBe('0.404 m2')
    expect(own?.verdict !== 'refused' && own?.bodySurface?.toString()).toBe('0.416 m2')
    const said = own?.findings.find(({ code }) => code === 'house-surface-factor')
    expect(said).toMatchObject({
      level: 'note',
      about: { k: '0.104', own: '0.101', by: 'A. Person', on: '2026-02-01', because: 'Our meeting of February' },
    })
    expect(said?.sources).toContain('house-policy')
    expect(ours?.findings.map(({ code }) => code)).not.toContain('house-surface-factor')
  })

  it('of a cat changes nothing in a dog', () => {
    const [line] = judge(surface, set(['dose.surface-factor.cat', '0.104'])).lines
    expect(line?.verdict !== 'refused' && line?.bodySurface?.toString()).toBe('0.404 m2')
    expect(line?.findings.map(({ code }) => code)).not.toContain('house-surface-factor')
  })

  it('is not read from a number that is no such factor', () => {
    expect(readSurfaceFactor('0.104', dosingRules)?.toString()).toBe('0.104')
    for (const text of ['10.4', '0.0104', 'ten', '0,104', '-0.1', '']) {
      expect(readSurfaceFactor(text, dosingRules)).toBeUndefined()
    }
  })
})

describe('the syringes of the drawer', () => {
  it('are the house’s where it set them, and a plan that draws with them says so once', () => {
    const [ours] = judge(drawn).lines
    // 1.84 mg in 0.184 mL: 0.18 by a hundredth, 0.2 by a tenth.
    expect(ours?.verdict !== 'refused' && ours?.drawn?.toString()).toBe('0.18 mL')
    const house = set(['dose.syringes', '1 by 0.02; 2.5 by 0.1; 20 by 1'])
    const result = judge({ ...drawn, dose: quantity('1', 'mg/kg'), stock: quantity('10', 'mg/mL') }, house)
    const [own] = result.lines
    expect(own?.verdict !== 'refused' && own?.drawn?.toString()).toBe('0.8 mL')
    const said = result.findings.find(({ code }) => code === 'house-syringes')
    expect(said).toMatchObject({ level: 'note', about: { by: 'A. Person', on: '2026-02-01' } })
    expect(judge(drawn).findings.map(({ code }) => code)).not.toContain('house-syringes')
  })

  it('are read as how much each holds and what its marks are', () => {
    expect(readSyringes('1 by 0.01; 3 by 0.1')).toEqual([
      { holds: '1', mark: '0.01' },
      { holds: '3', mark: '0.1' },
    ])
    expect(readSyringes('3 mL by 0.1 mL, 1 mL by 0.01 mL')?.[0]).toEqual({ holds: '1', mark: '0.01' })
    for (const text of ['', '1', '1 by 1', '0 by 0', '1 by 0.01; 1 by 0.1', '1 by 0,01', 'some'])
      expect(readSyringes(text)).toBeUndefined()
  })
})

describe('the emergency sheet', () => {
  it('is drawn with the syringes of the house too, and names the policy', () => {
    const { syringes } = ownDefaultsOf(set(['dose.syringes', '1 by 0.02; 20 by 1']), dosingRules)
    const facts = { ...emergencyFacts, ...(syringes && { syringes }) }
    const sheet = emergencySheet({ species: 'dog', weight: quantity('13', 'kg') }, facts)
    const lines = sheet.groups.flatMap((group) => group.lines).flatMap((line) => (line.kind === 'drawn' ? [line] : []))
    // Epinephrine: 0.13 mL of 1 mg/mL, between two marks of 0.02 mL.
    expect(lines.find(({ row }) => row.drug === 'epinephrine')?.drawn.toString()).toBe('0.14 mL')
    expect(sheet.findings.map(({ code }) => code)).toEqual(['house-syringes'])
    expect(emergencySheet({ species: 'dog', weight: quantity('13', 'kg') }, emergencyFacts).findings).toEqual([])
  })
})

describe('a policy that cannot be read', () => {
  it('is said with every plan, and the tool’s own holds', () => {
    const house = set(['dose.syringes', 'the usual ones'], ['dose.surface-factor.dog', '10.4'])
    const result = judge(surface, house)
    const unread = result.findings.filter(({ code }) => code === 'house-policy-unreadable')
    expect(unread.map(({ about }) => about.policy)).toEqual(['dose.syringes', 'dose.surface-factor.dog'])
    const [line] = result.lines
    expect(line?.verdict !== 'refused' && line?.bodySurface?.toString()).toBe('0.404 m2')
  })

  it('is also one that stands twice with different values', () => {
    const house = set(['dose.surface-factor.dog', '0.104'], ['dose.surface-factor.dog', '0.1'])
    expect(judge(surface, house).findings.map(({ code }) => code)).toContain('house-policy-unreadable')
  })
})
