import { describe, expect, it } from 'vitest'
import { laboratoryTerms as terms } from '#content/exchange/laboratory-terms.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { specimenResult } from '#core/journal/kinds/specimen-result.ts'
import { readOru } from './hl7/read-oru.ts'
import { writeOru } from './hl7/write-oru.ts'
import { reportOfResult } from './of-result.ts'
import { readTable } from './read-table.ts'
import { noAnswers, resultBody } from './to-result.ts'
import { ourTable, writeTable } from './write-table.ts'

/** A case with one culture of a whole kind: values, a zone, a category alone, a test. */
function filed() {
  const make = entryMaker()
  const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
  const specimen = make({ kind: 'specimen', subject: left })
  const [isolate] = specimenResult.example.isolates
  const row = { drug: 'marbofloxacin', agent: 'marbofloxacin', disk: null, category: 'S' } as const
  const body = {
    ...specimenResult.example,
    specimen: specimen.id,
    laboratory: null,
    standard: null,
    isolates: [
      {
        ...isolate,
        key: '1',
        organism: 'Staphylococcus pseudintermedius',
        species: 'staphylococcus-pseudintermedius',
        amount: 'heavy',
        results: [
          { ...row, method: 'MIC', raw: '<=0.5 mg/L' },
          { ...row, drug: 'gentamicin', agent: 'gentamicin', method: 'DISK', raw: '18 mm', disk: '10 µg' },
          { ...row, drug: 'cefalexin', agent: 'cefalexin', method: null, raw: 'R', category: 'R' },
        ],
        tests: [{ test: 'd-test', result: 'negative' }],
      },
    ],
  } as const
  const result = make({ kind: 'specimen-result', subject: left, body: structuredClone(body) as never })
  const theCase = fold([make({ kind: 'identity' }), make({ kind: 'household' }), specimen, result])
  const file = { theCase, contacts: new Map([['contact-1', { name: 'Rosalind Okafor' }]]) } as unknown as CaseFile
  const line = theCase.live('specimen-result')[0]
  if (!line) throw new Error('no result')
  return { file, line, standing: { specimen: specimen.id, laboratory: null, came: 'typed' } as const }
}

describe('a result that was saved for another program', () => {
  it('names the animal, its owner, the tube and the ear', () => {
    const { file, line } = filed()
    expect(reportOfResult(line, file)).toMatchObject({
      accession: 'NL-26-00417',
      label: 'B-1',
      animal: { name: 'Bramble', owner: 'Rosalind Okafor', chip: '000000000000001', species: 'dog', born: '2018-05' },
      site: 'bulla-on-entry',
      side: 'LEFT',
      status: 'final',
    })
  })

  it('and read again as a message or a table, is the same entry', () => {
    const { file, line, standing } = filed()
    const report = reportOfResult(line, file)
    const message = readOru(writeOru(report), terms)
    const one = message.kind === 'answer' ? message.answer[0]?.read : undefined
    const table = readTable(writeTable([report]), ourTable, terms)
    for (const read of [one, table]) {
      const again = read?.kind === 'answer' ? read.answer[0] : undefined
      expect(again && 'isolates' in again && resultBody(again, noAnswers, standing, susceptibility)).toEqual(line.body)
    }
  })
})
