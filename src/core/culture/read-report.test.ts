import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { emptyReport, printedIsolate } from './empty-report.ts'
import { readReport } from './read-report.ts'

const make = entryMaker()
const rows = [['enrofloxacin', '0.5 mg/L'] as const, ['clindamycin', '0.25 mg/L'] as const]
const isolates = [printedIsolate('1', 'Staphylococcus pseudintermedius', rows)]

/** A report of a laboratory that prints this standard, read as its case stands. */
function read(standard: string | null, judgedBy: string | null = null) {
  const animal = make({ kind: 'identity', body: identity.example })
  const specimen = make({ kind: 'specimen' })
  const report = {
    ...emptyReport,
    specimen: specimen.id,
    status: 'final',
    growth: 'growth',
    standard,
    isolates,
  } as const
  const result = make({ kind: 'specimen-result', body: report })
  const body = { result: result.id, decision: 'no-change', edition: judgedBy, text: 'Read.' } as const
  const theCase = fold([animal, specimen, result, make({ kind: 'result-read', body })])
  const [line] = theCase.live('specimen-result')
  return line ? readReport({ theCase }, line, susceptibility) : null
}

describe('a report read for its animal', () => {
  it('is read by the edition it was judged by, and an old case keeps it', () => {
    expect(read(null)?.isolates[0]?.results[0]?.category).toBe('R')
    expect(read(null, 'clsi-vet01s-6')?.isolates[0]?.results[0]?.category).toBe('S')
  })

  it('has the laboratory’s own edition beside it, whole, where it prints one that is held here', () => {
    expect(read('CLSI VET01S ed6')?.laboratory).toMatchObject({
      edition: { id: 'clsi-vet01s-6' },
      differences: [{ agent: 'enrofloxacin', raw: '0.5 mg/L', ours: 'R', theirs: 'S' }],
    })
    for (const standard of [null, 'CLSI VET01S ed7', 'our own table']) expect(read(standard)?.laboratory).toBeNull()
  })

  it('knows a name that was written before names were recognised', () => {
    expect(read(null)?.isolates[0]?.organism).toBe('staphylococcus-pseudintermedius')
  })

  it('is not read by another edition than it was judged by: nobody chose that one', () => {
    expect(read(null, 'own:an-edition-that-is-gone')).toBeNull()
  })
})
