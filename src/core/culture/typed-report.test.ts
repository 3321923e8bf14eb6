import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import {
  emptyIsolate,
  emptyRow,
  emptyTyped,
  readTypedReport,
  type TypedReport,
  type TypedRow,
  typedAgainReport,
} from './typed-report.ts'

const specimen = '0190a7c2-0000-7000-8000-000000000001'

function typed(rows: readonly Partial<TypedRow>[], organism = 'Staph pseudintermedius'): TypedReport {
  return {
    ...emptyTyped,
    status: 'final',
    growth: 'growth',
    came: 'from-paper',
    isolates: [{ ...emptyIsolate, organism, rows: [...rows.map((row) => ({ ...emptyRow, ...row })), emptyRow] }],
  }
}

function read(draft: TypedReport) {
  const outcome = readTypedReport(draft, specimen, susceptibility)
  return outcome.kind === 'answer' ? outcome.answer : outcome.refusal
}

describe('a report as it is typed', () => {
  it('keeps each drug as printed, with what the name means and what the number is', () => {
    const body = read(
      typed([
        { drug: 'Cephalexin', value: '<=2', unit: 'mg/L', category: 'S' },
        { drug: 'enrofloxacin', value: '24', unit: 'mm', disk: '5 µg' },
        { drug: 'doxycycline', category: 'R' },
      ]),
    )
    expect(body).toMatchObject({
      isolates: [
        {
          key: '1',
          results: [
            { drug: 'Cephalexin', agent: 'cefalexin', method: 'MIC', raw: '<=2 mg/L', disk: null, category: 'S' },
            { drug: 'enrofloxacin', agent: 'enrofloxacin', method: 'DISK', raw: '24 mm', disk: '5 µg', category: null },
            { drug: 'doxycycline', agent: 'doxycycline', method: null, raw: 'R', category: 'R' },
          ],
        },
      ],
    })
  })

  it('keeps a name that nobody knows, with no meaning until a person gives one', () => {
    const row = { drug: 'Enrofloxacyne', value: '1', unit: 'mg/L' } as const
    const agentIn = (more: Partial<TypedRow>) => {
      const body = read(typed([{ ...row, ...more }]))
      return 'isolates' in body ? body.isolates[0]?.results[0]?.agent : body
    }
    expect(agentIn({})).toBeNull()
    expect(agentIn({ agent: 'enrofloxacin' })).toBe('enrofloxacin')
    // What a person said of another name is no word about this one.
    expect(agentIn({ drug: 'doxycycline', agent: 'enrofloxacin' })).toBe('doxycycline')
  })

  it('asks for the unit of a bare number, and for a value that cannot be read', () => {
    expect(
      read(
        typed([
          { drug: 'doxycycline', value: '0.5' },
          { drug: 'doxycycline', value: 'ca. 2', unit: 'mg/L' },
          { drug: 'doxycycline' },
          { value: '2', unit: 'mg/L' },
        ]),
      ),
    ).toEqual([
      { at: 'value', isolate: 0, row: 0, because: 'unit-not-chosen' },
      { at: 'value', isolate: 0, row: 1, because: 'not-read' },
      { at: 'value', isolate: 0, row: 2, because: 'not-written' },
      { at: 'value', isolate: 0, row: 3, because: 'drug-not-written' },
    ])
  })

  it('fills nothing in', () => {
    expect(read(emptyTyped)).toEqual([
      { at: 'status', because: 'not-chosen' },
      { at: 'came', because: 'not-chosen' },
      { at: 'growth', because: 'not-chosen' },
    ])
    expect(read({ ...typed([]), isolates: [emptyIsolate] })).toEqual([
      { at: 'organism', isolate: 0, because: 'not-written' },
    ])
  })

  it('without growth holds no isolate, whatever stood there before', () => {
    expect(read({ ...typed([{ drug: 'doxycycline' }]), growth: 'none' })).toMatchObject({
      growth: 'none',
      isolates: [],
    })
  })

  it('is the same when it is typed again', () => {
    const body = read(
      typed([
        { drug: 'Cephalexin', value: '<=2', unit: 'mg/L', category: 'S' },
        { drug: 'doxycycline', category: 'R' },
        { drug: 'enrofloxacin', value: '24', unit: 'mm', disk: '5 µg' },
      ]),
    )
    if (!('isolates' in body)) throw new Error('It was refused.')
    expect(read(typedAgainReport(body))).toEqual(body)
  })
})
