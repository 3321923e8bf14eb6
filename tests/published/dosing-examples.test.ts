import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { calc } from '#actions/dosing/calc.ts'

type Row = Record<'id' | 'description' | 'inputs' | 'expected' | 'unit' | 'tolerance' | 'provenance', string>

const rows: Row[] = parse(readFileSync(new URL('./data/dosing-examples.csv', import.meta.url)), { columns: true })

/**
 * DX063 prints a rate per hour, but its input names a value without a unit: whether a dose or a rate is meant cannot
 * be known from it. Asked with `per: 'h'` the formula answers in the printed unit; see the test below.
 */
const unitCannotBeKnown = new Set(['DX063'])

describe('worked answers of the reference table', () => {
  it('holds 132 rows, each naming its source', () => {
    expect(rows).toHaveLength(132)
    expect(rows.filter((row) => row.provenance.trim() === '')).toEqual([])
  })

  for (const row of rows) {
    it(`${row.id} ${row.description} [${row.provenance}]`, () => {
      const result = calc(JSON.parse(row.inputs))
      expect(Math.abs((result.value ?? Number.NaN) - Number(row.expected))).toBeLessThanOrEqual(
        Number(row.tolerance) + 1e-12, // the subtraction is binary; the answers themselves are exact
      )
      if (!unitCannotBeKnown.has(row.id)) expect(result.unit).toBe(row.unit)
      expect(result.sources.length).toBeGreaterThan(0)
    })
  }

  it('DX063 answers in mg/lb/h when the input says that it is a rate per hour [Radlinsky 2005, abstract]', () => {
    const { value, unit } = calc({ op: 'mg_kg_to_mg_lb', value: 0.13, per: 'h' })
    expect(value).toBeCloseTo(0.06, 2)
    expect(unit).toBe('mg/lb/h')
  })
})
