import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { breakpointEdition } from '#core/journal/kinds/breakpoint-edition.ts'
import { editionById, editionCalled } from './editions.ts'
import { factsOfHouse } from './house-facts.ts'
import { readIsolates } from './read-isolates.ts'

const people = new Map([['person-surgeon', { name: 'A. Person' } as never]])
/** Our seventh edition with one value moved, as if the clinic’s own copy said so. */
const copy: BodyOf<'breakpoint-edition'> = {
  ...breakpointEdition.example,
  standard: 'CLSI VET01S',
  edition: 'ed7',
  year: 2024,
  from: 'Our copy, compared line by line.',
}
const isolates = [
  {
    key: '1',
    organism: 'Staphylococcus pseudintermedius',
    species: 'staphylococcus-pseudintermedius',
    amount: null,
    results: [{ drug: 'cefalexin', agent: 'cefalexin', method: 'MIC', raw: '8 mg/L', disk: null, category: null }],
    tests: [],
  } as const,
]

function house(
  ...entries: readonly { kind: 'breakpoint-edition' | 'house-policy'; body: object; supersedes?: readonly string[] }[]
) {
  const make = entryMaker()
  const made = entries.map(({ kind, body, supersedes }, at) =>
    make({
      kind,
      at: `2026-02-0${at + 1}T10:00:00.000Z`,
      body: body as never,
      ...(supersedes ? { supersedes: [...supersedes], reason: 'A row was wrong.' } : {}),
    }),
  )
  return { file: { house: fold(made), people }, ids: made.map(({ id }) => id) }
}
const category = (edition: string, facts = susceptibility) =>
  readIsolates(
    { host: 'dog', site: 'soft-tissue', edition, standard: null, isolates: [...isolates] } as never,
    facts,
  )[0]?.results[0]?.category

describe('what a clinic reads cultures by', () => {
  it('is ours while it has nothing of its own', () => {
    const facts = factsOfHouse(house().file, susceptibility)
    expect(facts.usual).toBe('clsi-vet01s-7')
    expect(facts.editions).toHaveLength(susceptibility.editions.length)
  })

  it('is its own copy once the house policy names it, and the reading shows it', () => {
    const { file, ids } = house({ kind: 'breakpoint-edition', body: copy })
    const own = `own:${ids[0]}`
    const loaded = factsOfHouse(file, susceptibility)
    expect(loaded.usual).toBe('clsi-vet01s-7')
    const chosen = house(
      { kind: 'breakpoint-edition', body: copy },
      { kind: 'house-policy', body: { policy: 'culture.edition', value: own, because: 'We own it.' } },
    )
    const facts = factsOfHouse(chosen.file, susceptibility)
    expect(facts.usual).toBe(own)
    // Ours: S <=2, R >=4. The copy of this test: S <=16.
    expect(category('clsi-vet01s-7', facts)).toBe('R')
    expect(category(facts.usual, facts)).toBe('S')
    expect(editionById(facts.editions, own).rows[0]?.ends).toMatchObject({
      known: 'house',
      sources: ['own-breakpoints'],
      where: 'Our copy, compared line by line, A. Person, 1 February 2026',
    })
  })

  it('knows a copy by its printed name before ours', () => {
    const { file, ids } = house({ kind: 'breakpoint-edition', body: copy })
    expect(editionCalled('CLSI VET01S ed7', susceptibility.editions)?.id).toBe('clsi-vet01s-7')
    expect(editionCalled('CLSI VET01S ed7', factsOfHouse(file, susceptibility).editions)?.id).toBe(`own:${ids[0]}`)
  })

  it('keeps a copy that was replaced for the cases judged by it, and takes it for nothing new', () => {
    const first = house({ kind: 'breakpoint-edition', body: copy })
    const old = first.ids[0] ?? ''
    const rows = copy.rows.map((row) => ({ ...row, susceptible: '<=4', between: '', resistant: '>=8' }))
    const { file } = house(
      { kind: 'breakpoint-edition', body: copy },
      { kind: 'breakpoint-edition', body: { ...copy, rows }, supersedes: [old] },
      { kind: 'house-policy', body: { policy: 'culture.edition', value: `own:${old}`, because: 'We own it.' } },
    )
    const facts = factsOfHouse(file, susceptibility)
    expect(category(`own:${old}`, facts)).toBe('S')
    expect(facts.usual).toBe('clsi-vet01s-7')
  })

  it('puts its own values of people before ours', () => {
    const { file, ids } = house({ kind: 'breakpoint-edition', body: { ...copy, audience: 'people' } })
    expect(factsOfHouse(file, susceptibility).people).toEqual([`own:${ids[0]}`, ...susceptibility.people])
  })

  it('stays ours when the policy names what animals cannot be read by', () => {
    for (const value of ['eucast-15', 'eucast-ecoff-2025', 'own:nothing', 'the newest']) {
      const { file } = house({ kind: 'house-policy', body: { policy: 'culture.edition', value, because: 'So.' } })
      expect(factsOfHouse(file, susceptibility).usual).toBe('clsi-vet01s-7')
    }
  })
})
