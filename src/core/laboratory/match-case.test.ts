import { describe, expect, it } from 'vitest'
import { type KnownCase, matchCase } from './match-case.ts'
import type { ReportedAnimal } from './report.ts'

const bella = { stream: 'case:1', name: 'Bella', species: 'dog', chip: null, labels: ['B-1'], accessions: [] } as const
const okafor: KnownCase = { ...bella, ownerName: 'Rosalind Okafor', chip: '985112001234567' }
const bell: KnownCase = { ...bella, stream: 'case:2', ownerName: 'Mateus Bell' }
const rows = [okafor, bell, { ...bell, stream: 'case:3', name: 'Moss', ownerName: 'Ines Fennimore' }]

const match = (animal: Partial<ReportedAnimal>, rest: { label?: string; accession?: string } = {}, known = rows) => {
  const nobody = { name: null, owner: null, chip: null, species: null, speciesPrinted: null, born: null }
  const report = { animal: { ...nobody, ...animal }, label: rest.label ?? null, accession: rest.accession ?? null }
  const found = matchCase(report, known)
  if (found.kind === 'one') return [found.fit.row.stream, found.fit.agree]
  return found.kind === 'none' ? 'none' : [found.kind, found.fits.map(({ row, against }) => [row.stream, against])]
}

describe('a report is filed to a case', () => {
  it('by two identifiers: name and owner, chip and name, name and tube, name and number', () => {
    expect(match({ name: 'bella', owner: 'Okafor' })).toEqual(['case:1', ['name', 'owner']])
    expect(match({ name: 'Bella', owner: 'Bell, M.' })).toEqual(['case:2', ['name', 'owner']])
    expect(match({ name: 'Bella', chip: '985 112 001 234 567' })).toEqual(['case:1', ['chip', 'name']])
    expect(match({ name: 'Moss' }, { label: 'B-1' })).toEqual(['case:3', ['name', 'label']])
    expect(match({ name: 'Bella' }, { accession: 'N-1' }, [{ ...bell, accessions: ['N-1'] }])).toEqual([
      'case:2',
      ['name', 'accession'],
    ])
  })

  it('never by a name alone, nor by a tube and a number alone', () => {
    expect(match({ name: 'Moss' })).toEqual(['too-few', [['case:3', []]]])
    expect(match({ name: 'Teasel', owner: 'Quill' })).toBe('none')
    expect(match({}, { label: 'B-1' })).toBe('none')
  })

  it('when two Bellas have the same tube on one day: by nobody until the owner or the chip is named', () => {
    expect(match({ name: 'Bella' }, { label: 'B-1' })).toEqual([
      'several',
      [
        ['case:1', []],
        ['case:2', []],
      ],
    ])
    expect(match({ name: 'Bella', owner: 'Bell' }, { label: 'B-1' })).toEqual(['case:2', ['name', 'owner', 'label']])
  })

  it('not when something stands against it', () => {
    expect(match({ name: 'Bella', owner: 'Okafor', chip: '985112009999999' }, {}, [okafor])).toEqual([
      'contradicted',
      [['case:1', ['chip']]],
    ])
    expect(match({ name: 'Bella', owner: 'Okafor', species: 'cat' }, {}, [okafor])).toEqual([
      'contradicted',
      [['case:1', ['species']]],
    ])
    expect(match({ name: 'Bella', owner: 'Quill' }, { label: 'B-1' }, [okafor])).toEqual([
      'contradicted',
      [['case:1', ['owner']]],
    ])
    // Her chip is her own, whoever brought her.
    expect(match({ name: 'Bella', owner: 'Quill', chip: '985112001234567' })).toEqual(['case:1', ['chip', 'name']])
  })
})
