import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { CountedRows } from '#actions/antibiogram/antibiogram.ts'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

const header = 'animal,collectedOn,host,organism,drug,mic,zone,category,purpose'
const table = (...rows: string[]) => `${[header, ...rows].join('\n')}\n`
const antibiogram = (input: string, ...options: string[]) => quietEar(['antibiogram', '-', ...options], input)
const answered = (input: string, ...options: string[]) => antibiogram(input, '--json', ...options).json() as CountedRows
const first = (answer: CountedRows) => answer.organisms[0]
const row = (more: Record<string, unknown> = {}) => {
  const isolate = { animal: 'A', collectedOn: '2026-01-05', host: 'dog', organism: 'Staphylococcus pseudintermedius' }
  return { ...isolate, drug: 'clindamycin', category: 'S', purpose: 'clinical', ...more }
}

describe('antibiogram', () => {
  it('gives the shape of the contract from a CSV of MICs and categories', () => {
    const answer = answered(
      table(
        'A,2026-01-05,dog,Staphylococcus pseudintermedius,cefalexin,2,,,clinical',
        'A,2026-01-05,dog,Staphylococcus pseudintermedius,clindamycin,,,R,clinical',
        'B,2026-01-06,dog,Staph. pseudintermedius,cephalexin,4,,,clinical',
        'B,2026-02-06,dog,Staph. pseudintermedius,cephalexin,2,,,clinical',
      ),
    )
    expect(answer.method.standard).toBe('CLSI VET01S ed7 (2024)')
    expect(first(answer)).toMatchObject({ organism: 'Staphylococcus pseudintermedius', n: 2, flag: 'n_below_30' })
    // CLSI VET01S ed7: dog, cefalexin, S <= 2, R >= 4 (SX001, SX002).
    const [cefalexin, clindamycin] = first(answer)?.drugs ?? []
    expect(cefalexin).toMatchObject({ drug: 'cefalexin', n: 2, s: 1, percent: 50, sdd: 0, notInterpretable: 0 })
    expect(cefalexin?.interval).toEqual([9.5, 90.5])
    expect(clindamycin).toMatchObject({ n: 1, s: 0, categoryOnly: 1, notTested: 1 })
    expect(answer.rows).toEqual({ read: 4, leftOut: { repeat: 1 } })
    expect(answer.sources.map(({ id }) => id)).toContain('frey-jacob-2020')
  })

  it('takes JSON as a list or one object after the other, and other delimiters', () => {
    const rows = [row(), row({ animal: 'B', category: 'R' })]
    const list = answered(JSON.stringify(rows, null, 2))
    const lines = answered(rows.map((one) => JSON.stringify(one)).join('\n'))
    const csv = answered(table('A,2026-01-05,dog,S. pseudintermedius,clindamycin,,,S,clinical').replaceAll(',', ';'))
    expect(first(list)?.drugs[0]).toMatchObject({ n: 2, s: 1 })
    expect(lines.organisms).toEqual(list.organisms)
    expect(first(csv)?.drugs[0]).toMatchObject({ n: 1, s: 1 })
    const bare = answered(JSON.stringify([{ ...row(), category: null, drug: 'cefalexin', mic: 2 }]))
    expect(first(bare)?.drugs[0]).toMatchObject({ drug: 'cefalexin', n: 1, s: 1 })
  })

  it('writes a table for people, and one for a spreadsheet', () => {
    const input = JSON.stringify([row(), row({ animal: 'B', drug: 'amikacin', category: 'S' })])
    const text = antibiogram(input).out
    expect(text).toContain('Dogs, Staphylococcus pseudintermedius: 2 isolates (fewer than 30)')
    expect(text).toContain('The first isolate of each animal and organism in each calendar year counts')
    expect(text).toContain('Decision support for licensed veterinary professionals')
    const lines = antibiogram(input, '--csv').out.trim().split('\r\n')
    expect(lines[0]).toMatch(/^host,site,organism,isolates,/)
    expect(lines).toHaveLength(3)
    const file = join(folderForTest(), 'isolates.json')
    writeFileSync(file, input)
    expect(quietEar(['antibiogram', file, '--csv']).out.trim().split('\r\n')).toEqual(lines)
  })

  it('names what is wrong with a table', () => {
    expect(problem(antibiogram(JSON.stringify([row({ category: 'green' })]), '--json'))).toMatchObject({
      code: 'wrong-value',
      path: 'rows[0].category',
    })
    expect(problem(antibiogram('', '--json')).code).toBe('empty')
    expect(problem(antibiogram('[{"animal":"A"', '--json')).code).toBe('not-json')
    expect(problem(antibiogram(`${header}\nA,2026-01-05\n`)).code).toBe('not-csv')
    expect(problem(antibiogram(JSON.stringify([row()]), '--minimum', 'few')).path).toBe('minimum')
  })
})
