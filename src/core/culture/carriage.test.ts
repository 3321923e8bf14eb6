import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { identity as identityKind } from '#core/journal/kinds/identity.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { carriagesOf, namesOfCarriages } from './carriage.ts'
import { emptyReport, printedIsolate } from './empty-report.ts'

const make = entryMaker()
const identity = make({ kind: 'identity', body: identityKind.example })
const specimen = make({ kind: 'specimen' })

/** The case of these entries in a clinic without anything of its own. */
function fileOf(...entries: readonly Entry[]) {
  return { theCase: fold(entries), house: fold([]), people: new Map() }
}

function isolate(species: string, rows: readonly (readonly [string, string])[], tests: StoredIsolate['tests'] = []) {
  return {
    key: '1',
    organism: species,
    species,
    amount: null,
    results: rows.map(([agent, raw]) => {
      return { drug: agent, agent, method: 'MIC' as const, raw, disk: null, category: null }
    }),
    tests,
  }
}

function found(isolates: StoredIsolate[], edition: string | null = null) {
  const result = make({
    kind: 'specimen-result',
    body: { ...emptyReport, specimen: specimen.id, status: 'final', growth: 'growth', isolates },
  })
  const read = make({
    kind: 'result-read',
    body: { result: result.id, decision: 'no-change', edition, text: 'Read.' },
  })
  return carriagesOf(fileOf(identity, specimen, result, read), susceptibility)
}

describe('what asks for hygiene', () => {
  it('is a staphylococcus that its oxacillin says to be methicillin-resistant, by its short name', () => {
    const [one, ...others] = found([isolate('staphylococcus-pseudintermedius', [['oxacillin', '>=4']])])
    expect(others).toEqual([])
    expect(one).toMatchObject({
      kind: 'methicillin-resistant',
      name: 'MRSP',
      organism: 'Staphylococcus pseudintermedius',
      sure: true,
      side: 'LEFT',
    })
    const mrsa = found([isolate('staphylococcus-aureus', [], [{ test: 'meca', result: 'positive' }])])
    expect(mrsa.map(({ name, sure }) => [name, sure])).toEqual([['MRSA', true]])
  })

  it('is found in a report whose names nobody had settled when it was written', () => {
    const written = printedIsolate('1', 'Staph. pseudintermedius', [['Oxacillin', '>=4 mg/L']])
    expect(found([written]).map(({ name }) => name)).toEqual(['MRSP'])
  })

  it('is not a susceptible one, nor one that nobody tested', () => {
    expect(found([isolate('staphylococcus-pseudintermedius', [['oxacillin', '<=0.25']])])).toEqual([])
    expect(found([isolate('staphylococcus-pseudintermedius', [['doxycycline', '<=0.12']])])).toEqual([])
  })

  it('is an extended-spectrum beta-lactamase: sure when confirmed, open when only screened', () => {
    const rows = [['cefotaxime', '8']] as const
    const confirmed = found([isolate('escherichia-coli', rows, [{ test: 'esbl-confirmation', result: 'positive' }])])
    expect(confirmed.map(({ name, sure }) => [name, sure])).toEqual([['ESBL', true]])
    expect(found([isolate('escherichia-coli', rows)]).map(({ sure }) => sure)).toEqual([false])
  })

  it('is a suspected carbapenemase, never sure before it is confirmed', () => {
    const all = found([isolate('klebsiella-pneumoniae', [['meropenem', '>=16']])])
    expect(all.map(({ kind, sure }) => [kind, sure])).toContainEqual(['carbapenemase', false])
  })

  it('is read by the edition it was judged by, and by the usual one where the case names one that is not held', () => {
    const rows = [isolate('staphylococcus-pseudintermedius', [['oxacillin', '>=4']])]
    expect(namesOfCarriages(found(rows, 'clsi-vet01s-6'))).toBe('MRSP')
    expect(namesOfCarriages(found(rows, 'a-house-edition'))).toBe('MRSP')
  })

  it('ends when the report is taken away, not before', () => {
    const result = make({
      kind: 'specimen-result',
      body: {
        ...emptyReport,
        specimen: specimen.id,
        status: 'final',
        growth: 'growth',
        isolates: [isolate('staphylococcus-pseudintermedius', [['oxacillin', '>=4']])],
      },
    })
    const away = make({ kind: 'withdrawal', withdraws: result.id, reason: 'Another animal’s.' })
    expect(carriagesOf(fileOf(identity, specimen, result), susceptibility)).toHaveLength(1)
    expect(carriagesOf(fileOf(identity, specimen, result, away), susceptibility)).toEqual([])
  })
})
