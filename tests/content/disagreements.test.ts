import { describe, expect, it } from 'vitest'
import { disagreements } from '#content/evidence/disagreements.ts'
import { formulary } from '#content/formulary/index.ts'
import { sources } from '#content/sources/index.ts'
import type { Disagreement } from '#core/evidence/disagreement.ts'
import { type Drug, rowKey } from '#core/formulary/drug.ts'

const all: readonly Disagreement[] = disagreements
const drugs: readonly Drug[] = formulary
const seen = new Map<string, boolean>(sources.map((source) => [source.id, 'seenAt' in source]))

describe('what sources say differently', () => {
  it('has two sides at least, and says what the tool does', () => {
    const lame = all.filter(({ says, rows = [], does }) => says.length + rows.length < 2 || does.length < 20)
    expect(lame.map(({ about }) => about)).toEqual([])
  })

  it('names rows that the formulary has', () => {
    const lost = all.flatMap(({ rows = [] }) =>
      rows.filter(({ drug, species, row }) => {
        const held = drugs.find(({ id }) => id === drug)?.doses ?? []
        return !held.some((one) => one.species === species && rowKey(one) === row)
      }),
    )
    expect(lost).toEqual([])
  })

  it('cites sources that have a file, and says "read" only of one that somebody saw', () => {
    const facts = all.flatMap(({ says }) => says)
    expect(facts.flatMap((fact) => fact.sources).filter((id) => !seen.has(id))).toEqual([])
    expect(facts.filter(({ known, sources: ids }) => known === 'read' && !ids.some((id) => seen.get(id)))).toEqual([])
  })

  // The list of the dosing rules, section 23; each is found as a row, another range, an interval or a side above.
  it.each([
    ['methadone', 'dog', 'otherRanges'],
    ['lidocaine', 'dog', 'otherRanges'],
    ['bupivacaine', 'cat', 'otherRanges'],
    ['cefazolin', 'dog', 'otherIntervals'],
    ['atropine', 'dog', 'otherRanges'],
    ['enrofloxacin', 'cat', 'otherRanges'],
    ['marbofloxacin', 'dog', 'otherRanges'],
    ['rifampicin', 'dog', 'otherRanges'],
    ['dopamine', 'dog', 'otherRanges'],
  ] as const)('keeps both sides of %s in a %s', (id, species, where) => {
    const rows = drugs.find((drug) => drug.id === id)?.doses.filter((row) => row.species === species) ?? []
    expect(rows.some((row) => (row[where]?.length ?? 0) > 0)).toBe(true)
  })
})
