import { describe, expect, it } from 'vitest'
import { problem, quietEar } from './run-for-tests.ts'

const isolates = [
  {
    id: '1',
    organism: 'Staph. pseudintermedius',
    results: [
      { drug: 'Oxacillin', mic: '>=4' },
      { drug: 'cephalexin', mic: 1, category: 'S' },
      { drug: 'enrofloxacin', mic: '<=0.5' },
      { drug: 'marbofloxacin', mic: '0.25' },
      { drug: 'gentamicin', zone: 18, disk: '10 ug' },
      { drug: 'clindamycin', category: 'R' },
      { drug: 'Wondermycin', mic: '2' },
    ],
    tests: { 'd-test': null, meca: 'positive' },
  },
]
const input = { host: 'dog', specimen: 'middle-ear', standard: 'CLSI VET01S ed7', isolates }
const culture = (asked: unknown, ...options: string[]) => quietEar(['culture', '-', ...options], JSON.stringify(asked))
type Result = { drug: string; category: string } & Record<string, unknown>
type Answer = {
  standard: string
  laboratory?: { standard: string; differences: { drug: string; ours: string; theirs: string }[] }
  isolates: {
    id: string
    species: string | null
    results: Result[]
    phenotype: { mr: string; mdr: string; categories: string[] }
    findings: { code: string; level: string; text: string; sources: { citation: string }[] }[]
  }[]
}
const answered = (asked: unknown) => culture(asked, '--json').json() as Answer
const result = (answer: Answer, drug: string) => answer.isolates[0]?.results.find((one) => one.drug === drug)

describe('culture', () => {
  const answer = answered(input)

  it('reads a culture in the shape of the contract, the edition in its long form', () => {
    expect(answer.standard).toBe('CLSI VET01S ed7 (2024)')
    expect(answer.isolates[0]?.phenotype.mr).toBe('MRSP')
    expect(result(answer, 'cephalexin')).toMatchObject({
      category: 'R',
      raw: '1',
      before: 'S',
      changedBy: 'methicillin-resistance',
      laboratory: 'S',
      breakpoint: { standard: 'CLSI VET01S ed7 (2024)', host: 'dog', S: '<=2', R: '>=4' },
    })
    expect(result(answer, 'enrofloxacin')).toMatchObject({ category: 'NI', possible: ['S', 'SDD', 'R'] })
    expect(result(answer, 'marbofloxacin')).toMatchObject({ category: 'SDD', breakpoint: { dose: '5.5 mg/kg' } })
    expect(result(answer, 'gentamicin')).toMatchObject({ category: 'no_breakpoint', fallback: { category: 'S' } })
    expect(result(answer, 'clindamycin')).toMatchObject({ category: 'R', flags: ['laboratory-category-only'] })
    expect(result(answer, 'Wondermycin')).toMatchObject({ category: 'NI', agent: null })
  })

  it('says every finding as a sentence, a rule with its sources', () => {
    const findings = answer.isolates[0]?.findings ?? []
    expect(findings.every(({ text }) => text.length > 20 && !text.includes('{'))).toBe(true)
    const methicillin = findings.find(({ code }) => code === 'methicillin-resistant')
    expect(methicillin?.sources.length).toBeGreaterThan(1)
  })

  it('reads by the usual edition when none is named, and sets another one of the laboratory beside it', () => {
    const { standard: _, ...without } = input
    const both = answered({ ...without, laboratoryStandard: 'CLSI VET01S ed6 (2023)' })
    expect(both.standard).toBe('CLSI VET01S ed7 (2024)')
    expect(both.laboratory?.differences).toContainEqual(
      expect.objectContaining({ drug: 'marbofloxacin', ours: 'SDD', theirs: 'S' }),
    )
  })

  it('asks for a table too, for people', () => {
    const { out } = culture(input)
    expect(out).toContain('changed because of methicillin resistance (S)')
    expect(out).toContain('the panel does not reach far enough')
  })

  it.each([
    [{ ...input, standard: 'CLSI VET01S ed8' }, 'standard-unknown', 'standard'],
    [{ ...input, specimen: 'tail' }, 'specimen-unknown', 'specimen'],
    [{ ...input, host: 'horse' }, 'invalid-value', 'host'],
    [
      { ...input, isolates: [{ ...isolates[0], results: [{ drug: 'x' }] }] },
      'nothing-printed',
      'isolates[0].results[0]',
    ],
    [
      { ...input, isolates: [{ ...isolates[0], results: [{ drug: 'x', mic: 1, zone: 20 }] }] },
      'mic-and-zone',
      'isolates[0].results[0]',
    ],
    [{ ...input, isolates: [...isolates, ...isolates] }, 'id-twice', 'isolates'],
  ])('refuses malformed input and names the field', (asked, code, path) => {
    const run = culture(asked, '--json')
    expect(run.status).toBe(2)
    expect(problem(run)).toMatchObject({ code, path })
  })
})
