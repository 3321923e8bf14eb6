import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { quantity } from '#core/units/quantity.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { flagsOfGiven } from './flag-given.ts'
import { storedHow } from './how-given.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function flags(
  species: 'dog' | 'cat',
  kg: string,
  doses: readonly Partial<BodyOf<'drug-given'>>[],
  {
    condition = 5,
    planned = [] as readonly Partial<BodyOf<'planned-line'>>[],
    sameMinute = false,
    pressure = null as readonly [what: 'mean' | 'systolic', mmHg: string, artefact?: boolean] | null,
  } = {},
) {
  const make = entryMaker()
  const identity = make({ kind: 'identity' })
  const entries: Entry[] = [
    { ...identity, body: { ...(identity.body as object), species, born: null } },
    make({
      kind: 'weight',
      body: { weight: { value: kg, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: condition },
    }),
    ...planned.map((line) => {
      const entry = make({ kind: 'planned-line' })
      return { ...entry, body: { ...(entry.body as object), ...line } }
    }),
  ]
  if (pressure) {
    const [what, value, artefact = false] = pressure
    const entry = make({ kind: 'observation' })
    const values = [{ what, value: { value, unit: 'mm[Hg]' }, method: null, artefact }]
    entries.push({ ...entry, body: { ...(entry.body as object), values } })
  }
  const given = doses.map((dose) => {
    const entry = make({ kind: 'drug-given' })
    const happenedAt = sameMinute ? { ...entry.happenedAt, at: '2026-11-25T10:00:00.000Z' } : entry.happenedAt
    return { ...entry, happenedAt, body: { ...(entry.body as object), ...dose } }
  })
  const found = flagsOfGiven(fold([...entries, ...given]), knowledge)
  return given.map(({ id }) => (found.get(id) ?? []).map(({ code }) => code))
}

const mg = (value: string) => ({ value, unit: 'mg' }) as const
const block = { drug: 'bupivacaine', use: 'local_block', route: 'perineural' }

describe('what was given is flagged, never refused', () => {
  it('flags millilitres and tablets by what they hold, where the planned line says it', () => {
    const methadone = {
      line: 'opioid',
      drug: 'methadone',
      use: 'analgesia_bolus',
      route: 'IM',
      stock: { value: '10', unit: 'mg/mL' },
      drawn: { value: '0.24', unit: 'mL' },
    } as const
    const given = { line: 'opioid', drug: 'methadone', use: 'analgesia_bolus', route: 'IM' } as const
    // 2.4 mL × 10 mg/mL in 8.2 kg: 2.9 mg/kg, tenfold the 0.24 mL of the plan.
    const slip = flags('dog', '8.2', [{ ...given, amount: { value: '2.4', unit: 'mL' } }], { planned: [methadone] })
    expect(slip[0]).toContain('dose-five-times-range')
    const right = flags('dog', '8.2', [{ ...given, amount: { value: '0.24', unit: 'mL' } }], { planned: [methadone] })
    expect(right[0]).toEqual([])

    const tablets = {
      line: 'antibiotic',
      drug: 'amoxicillin-clavulanate',
      use: 'antibiotic_course',
      route: 'PO',
      stock: null,
      drawn: null,
      how: storedHow({ tablet: { strength: quantity('250', 'mg') } }),
    } as const
    const eaten = { line: 'antibiotic', drug: tablets.drug, use: tablets.use, route: 'PO' } as const
    // Two tablets of 250 mg in 8.2 kg: 61 mg/kg.
    const two = flags('dog', '8.2', [{ ...eaten, amount: { value: '2', unit: '{tablet}' } }], { planned: [tablets] })
    expect(two[0]).toContain('dose-twice-range')
  })

  it('flags the second ear when the ceiling of the animal is passed (8.2 kg dog: 16.4 mg in all)', () => {
    expect(
      flags('dog', '8.2', [
        { ...block, amount: mg('10') },
        { ...block, amount: mg('8') },
      ]),
    ).toEqual([[], ['local-anaesthetic-ceiling']])
  })

  it('flags a drug that is forbidden in a cat, and an NSAID on top of a steroid', () => {
    expect(flags('cat', '4', [{ drug: 'paracetamol', use: 'analgesia_oral', route: 'PO', amount: mg('40') }])).toEqual([
      expect.arrayContaining(['forbidden-for-species']),
    ])
    const steroid = { drug: 'dexamethasone', use: 'steroid', route: 'IV', amount: mg('1') }
    const nsaid = { drug: 'meloxicam', use: 'nsaid', route: 'SC', amount: mg('1.6') }
    expect(flags('dog', '8', [steroid, nsaid])[1]).toContain('nsaid-with-steroid')
  })

  it('flags ten times too much', () => {
    expect(
      flags('dog', '10', [{ drug: 'methadone', use: 'analgesia_bolus', route: 'IV', amount: mg('30') }])[0],
    ).toContain('dose-five-times-range')
  })

  it('counts two blocks stamped in the same minute one after the other', () => {
    const two = [
      { ...block, amount: mg('10') },
      { ...block, amount: mg('8') },
    ]
    expect(flags('dog', '8.2', two, { sameMinute: true })).toEqual([[], ['local-anaesthetic-ceiling']])
  })

  it('holds a fat animal’s block against its lean weight (14 kg, condition 9: 10 kg, 20 mg in all)', () => {
    const large = [{ ...block, amount: mg('28') }]
    expect(flags('dog', '14', large, { condition: 9 })[0]).toContain('local-anaesthetic-ceiling')
    expect(flags('dog', '14', large)[0]).toEqual([])
  })

  it('sees what a drug meets also where its row is not certain or nobody wrote how much', () => {
    const steroid = { drug: 'dexamethasone', use: 'steroid', route: 'IV', amount: mg('0.5') }
    const unlabelled = { drug: 'meloxicam', use: 'nsaid', route: 'SC', amount: mg('0.8'), line: null }
    expect(flags('cat', '4', [steroid, unlabelled])[1]).toContain('nsaid-with-steroid')
    const tablets = { drug: 'carprofen', use: 'nsaid', route: 'PO', amount: { value: '1', unit: '{tablet}' } } as const
    expect(flags('dog', '8', [steroid, tablets])[1]).toContain('nsaid-with-steroid')
    const ownWords = { ...unlabelled, use: 'against pain' }
    expect(flags('cat', '4', [steroid, ownWords])[1]).toContain('nsaid-with-steroid')
  })

  it('reads millilitres by the strength of the planned line, and otherwise counts nothing as little', () => {
    const first = { ...block, line: 'block', amount: { value: '2', unit: 'mL' } } as const
    const second = { ...block, line: null, amount: mg('8') } as const
    const planned = [{ line: 'block', drug: 'bupivacaine', stock: { value: '5', unit: 'mg/mL' } }] as const
    expect(flags('dog', '8.2', [first, second], { planned })[1]).toEqual(['local-anaesthetic-ceiling'])
    expect(flags('dog', '8.2', [first, second])[1]).toEqual(['local-anaesthetic-uncounted'])
  })

  it('does not call it wrong that a dose by surface or by animal was written in milligrams', () => {
    const reversal = { drug: 'atipamezole', use: 'reversal', route: 'IM', amount: mg('2.3') }
    expect(flags('dog', '10', [reversal])[0]).toEqual([])
    const visit = (amount: string) => ({ drug: 'gabapentin', use: 'anxiolytic', route: 'PO', amount: mg(amount) })
    expect(flags('cat', '4', [visit('100')])[0]).toEqual([])
    expect(flags('cat', '4', [visit('300')])[0]).toContain('over-single-maximum')
  })

  it('flags an NSAID given while the pressure was low: mean under 60, in dogs systolic under 90 (AAHA 2020, dvm360)', () => {
    const nsaid = { drug: 'carprofen', use: 'nsaid', route: 'SC', amount: mg('32') }
    const dog = (pressure: readonly ['mean' | 'systolic', string, boolean?]) =>
      flags('dog', '8', [nsaid], { pressure })[0]
    expect(dog(['mean', '55'])).toContain('excluded')
    expect(dog(['mean', '60'])).not.toContain('excluded')
    expect(dog(['mean', '55', true])).not.toContain('excluded')
    expect(dog(['systolic', '85'])).toContain('excluded')
    const cat = { drug: 'robenacoxib', use: 'nsaid', route: 'SC', amount: mg('8') }
    expect(flags('cat', '4', [cat], { pressure: ['systolic', '85'] })[0]).not.toContain('excluded')
    expect(flags('cat', '4', [cat], { pressure: ['mean', '55'] })[0]).toContain('excluded')
  })

  it('holds a dose against the row it most likely meant (buprenorphine 0.24 mg/kg under the skin, 21 CFR 522.230)', () => {
    const strong = (route: string) => ({ drug: 'buprenorphine', use: 'analgesia_bolus', route, amount: mg('0.96') })
    expect(flags('cat', '4', [strong('SC')])[0]).toEqual([])
    expect(flags('cat', '4', [strong('IM')])[0]).toContain('dose-five-times-range')
  })

  it('says nothing about the invented cases, whose doses were planned and checked', () => {
    for (const chart of [tansy(), moss()]) expect([...flagsOfGiven(fold(chart.entries), knowledge).keys()]).toEqual([])
  })
})
