import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { specimenResult } from '#core/journal/kinds/specimen-result.ts'
import { filingOf } from './filing.ts'
import { matchSpecimen } from './match-specimen.ts'
import type { LaboratoryReport } from './report.ts'
import { noAnswers, questionsOf, resultBody } from './to-result.ts'

type Body = BodyOf<'specimen-result'>
const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const

function aCase() {
  const make = entryMaker()
  const specimen = make({ kind: 'specimen', subject: left })
  const body: Body = { ...specimenResult.example, specimen: specimen.id, accession: 'N-1' }
  const result = make({ kind: 'specimen-result', subject: left, body })
  return { make, specimen, body, result }
}

describe('a report under a number that the case has', () => {
  it('is not filed twice, also when it came in another way', () => {
    const { specimen, body, result } = aCase()
    const theCase = fold([specimen, result])
    expect(filingOf({ ...body, came: 'hl7' }, theCase)).toMatchObject({
      kind: 'already-here',
      result: { header: { id: result.id } },
    })
    expect(filingOf({ ...body, accession: 'N-2' }, theCase).kind).toBe('new')
  })

  it('takes the place of the earlier, and names who had read it, told of it and changed the medicines', () => {
    const { make, specimen, body, result } = aCase()
    const preliminary = { ...result, body: { ...body, status: 'preliminary' } } as typeof result
    const final = make({ kind: 'specimen-result', subject: left, body, supersedes: [result.id] })
    const read = make({
      kind: 'result-read',
      subject: left,
      body: { result: result.id, decision: 'change', edition: null, text: 'x' },
    })
    const told = make({
      kind: 'told',
      subject: left,
      body: { about: final.id, who: 'owner', contact: 'c', by: 'phone', text: null },
    })
    const change = make({ kind: 'medicine-change', body: { read: read.id, because: 'x', stops: [], starts: [] } })
    const theCase = fold([specimen, preliminary, final, read, told, change])
    const corrected = filingOf({ ...body, status: 'corrected', growth: 'none', isolates: [] }, theCase)
    expect(corrected).toMatchObject({ kind: 'supersedes', results: [{ header: { id: final.id } }] })
    expect(corrected.kind === 'supersedes' && corrected.acted.map(({ what, line }) => [what, line.header.id])).toEqual([
      ['read', read.id],
      ['told-owner', told.id],
      ['changed', change.id],
    ])
  })

  it('is left alone when it is older than what stands there, or of another tube', () => {
    const { make, specimen, body, result } = aCase()
    const theCase = fold([specimen, result])
    expect(filingOf({ ...body, status: 'preliminary', isolates: [] }, theCase).kind).toBe('older-than-filed')
    const other = make({
      kind: 'specimen',
      subject: left,
      body: { ...(specimen.body as BodyOf<'specimen'>), label: 'B-2' },
    })
    expect(filingOf({ ...body, specimen: other.id }, fold([specimen, other, result])).kind).toBe('other-specimen')
  })

  it('taken back and filed again changes nothing else', () => {
    const { make, specimen, body, result } = aCase()
    const others = [specimen, make({ kind: 'note' }), make({ kind: 'weight' })]
    const back = make({ kind: 'withdrawal', subject: left, withdraws: result.id, reason: 'Another Bella.' })
    const empty = fold([...others, result, back])
    expect(filingOf(body, empty).kind).toBe('new')
    const again = make({ kind: 'specimen-result', subject: left, body })
    const [before, after] = [fold([...others, result]), fold([...others, result, back, again])]
    expect(after.live('specimen-result').map((line) => line.body)).toEqual(
      before.live('specimen-result').map((line) => line.body),
    )
    for (const { id } of others) expect(after.line(id)).toEqual(before.line(id))
    expect(after.line(result.id)?.state).toBe('withdrawn')
  })
})

describe('the tube of a report', () => {
  it('is the one of its label, or of its number; the other ear is refused', () => {
    const { make, specimen, result } = aCase()
    const theCase = fold([specimen, result])
    const match = (label: string | null, accession: string | null, side: LaboratoryReport['side']) =>
      matchSpecimen({ label, accession, side }, theCase).kind
    expect(match('b-1', null, 'LEFT')).toBe('one')
    expect(match('B-1', null, null)).toBe('one')
    expect(match(null, 'N-1', null)).toBe('one')
    expect(match('B-1', null, 'RIGHT')).toBe('other-side')
    expect(match('B-1', null, 'BOTH')).toBe('other-side')
    expect(match('B-9', null, 'LEFT')).toBe('choose')
    expect(match('B-9', null, 'RIGHT')).toBe('none')
    const twin = make({
      kind: 'specimen',
      subject: { ...left, side: 'RIGHT' },
      body: { ...(specimen.body as BodyOf<'specimen'>), label: 'B-9' },
    })
    expect(matchSpecimen({ label: null, accession: null, side: null }, fold([specimen, twin]))).toMatchObject({
      kind: 'choose',
      among: { length: 2 },
    })
  })
})

describe('a report that becomes an entry', () => {
  const place = { line: 1, segment: null, field: null }
  const drug = { code: null, unit: null, disk: null, category: null, place } as const
  const report: LaboratoryReport = {
    laboratory: null,
    accession: 'N-1',
    label: 'B-1',
    animal: { name: 'Bella', owner: null, chip: null, species: null, speciesPrinted: null, born: null },
    collected: null,
    reported: null,
    site: null,
    side: 'LEFT',
    status: null,
    growth: 'growth',
    standard: null,
    isolates: [
      {
        key: '1',
        organism: 'S. pseudintermedius',
        code: null,
        amount: null,
        drugs: [
          { ...drug, drug: 'Marb X', value: '<=0.5' },
          { ...drug, drug: 'Clindamycin', code: '18908-4', value: '4', unit: 'mg/L' },
        ],
        tests: [],
      },
    ],
    text: [],
    doubts: [],
  }
  const standing = { specimen: specimenResult.example.specimen, laboratory: null, came: 'table' } as const

  it('asks what it does not say, and is none before', () => {
    const questions = questionsOf(report, noAnswers, susceptibility)
    expect(questions.map((one) => ('printed' in one ? `${one.kind} ${one.printed}` : one.kind))).toEqual([
      'status',
      'unit',
      'agent Marb X',
    ])
    expect(resultBody(report, noAnswers, standing, susceptibility)).toBeNull()
  })

  it('keeps names as printed beside what they were taken for', () => {
    const answers = { ...noAnswers, status: 'final', unit: 'mg/L', agents: { 'Marb X': 'marbofloxacin' } } as const
    const body = resultBody(report, answers, standing, susceptibility)
    expect(specimenResult.body.safeParse(body).success).toBe(true)
    expect(body?.isolates[0]).toMatchObject({
      organism: 'S. pseudintermedius',
      species: 'staphylococcus-pseudintermedius',
      results: [
        { drug: 'Marb X', agent: 'marbofloxacin', method: 'MIC', raw: '<=0.5 mg/L' },
        { drug: 'Clindamycin', agent: 'clindamycin', method: 'MIC', raw: '4 mg/L' },
      ],
    })
    const unknown = { ...answers, unit: 'unknown', agents: { 'Marb X': null } } as const
    expect(resultBody(report, unknown, standing, susceptibility)?.isolates[0]?.results[0]).toMatchObject({
      agent: null,
      method: null,
      raw: '<=0.5',
    })
  })
})
