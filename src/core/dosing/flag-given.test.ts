import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { flagsOfGiven } from './flag-given.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

function flags(species: 'dog' | 'cat', kg: string, doses: readonly Partial<BodyOf<'drug-given'>>[]) {
  const make = entryMaker()
  const identity = make({ kind: 'identity' })
  const entries: Entry[] = [
    { ...identity, body: { ...(identity.body as object), species, born: null } },
    make({ kind: 'weight', body: { weight: { value: kg, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 } }),
  ]
  const given = doses.map((dose) => {
    const entry = make({ kind: 'drug-given' })
    return { ...entry, body: { ...(entry.body as object), ...dose } }
  })
  const found = flagsOfGiven(fold([...entries, ...given]), knowledge)
  return given.map(({ id }) => (found.get(id) ?? []).map(({ code }) => code))
}

const mg = (value: string) => ({ value, unit: 'mg' }) as const
const block = { drug: 'bupivacaine', use: 'local_block', route: 'perineural' }

describe('what was given is flagged, never refused', () => {
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

  it('says nothing about the invented cases, whose doses were planned and checked', () => {
    for (const chart of [tansy(), moss()]) expect([...flagsOfGiven(fold(chart.entries), knowledge).keys()]).toEqual([])
  })
})
