import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import type { Species } from '#core/animal/species.ts'
import { printedIsolate } from './empty-report.ts'
import { readIsolates } from './read-isolates.ts'
import { untestedDrugs } from './untested-drugs.ts'

function untested(species: string, organism: string, rows: readonly (readonly [agent: string, raw: string])[]) {
  const stored = printedIsolate('1', organism, rows)
  const results = stored.results.map((row) => ({ ...row, agent: row.drug }))
  const request = { host: species as Species, site: 'soft-tissue', edition: susceptibility.usual } as const
  const isolates = readIsolates({ ...request, isolates: [{ ...stored, species: organism, results }] }, susceptibility)
  return untestedDrugs([], isolates, species as Species, susceptibility, formulary)
}

describe('what a laboratory could still test', () => {
  it('is no drug that the organism is always resistant to, and none of category A', () => {
    const said = untested('dog', 'pseudomonas-aeruginosa', [])
    expect(said).toContain('marbofloxacin')
    expect(said).not.toContain('doxycycline')
    expect(said).not.toContain('meropenem')
  })

  it('is no beta-lactam for a methicillin-resistant isolate', () => {
    const resistant = untested('dog', 'staphylococcus-pseudintermedius', [['oxacillin', '>=4 mg/L']])
    expect(resistant).toContain('doxycycline')
    expect(resistant).not.toContain('cefalexin')
    expect(untested('dog', 'staphylococcus-pseudintermedius', [['oxacillin', '<=0.25 mg/L']])).toContain('cefalexin')
  })

  it('has a course for this species', () => {
    expect(untested('dog', 'escherichia-coli', [])).toContain('cefpodoxime')
    expect(untested('cat', 'escherichia-coli', [])).not.toContain('cefpodoxime')
  })
})
