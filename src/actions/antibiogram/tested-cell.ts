import { printedCategory, readPrinted } from '#core/culture/printed-value.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { type Cells, type Place, wanted, wrong } from './grown-cells.ts'

export type TestedRow = StoredIsolate['results'][number]

/**
 * What a row says of its drug, as a laboratory would print it: a bare `mic` is mg/L, a bare `zone` is mm. Null where it
 * holds neither of them nor a category: then the drug was not tested.
 */
export function testedIn(cells: Cells, place: Place, agentOf: (printed: string) => string | null): TestedRow | null {
  const { mic, zone, disk, category } = cells
  if (mic === '' && zone === '' && category === '') return null
  if (mic !== '' && zone !== '') throw wrong('zone', place, 'an MIC stands beside it; write each in a row of its own')
  const drug = wanted(cells, 'drug', place)
  const shared = { drug, agent: agentOf(drug), disk: disk || null, category: category || null }
  if (category !== '' && !isCategory(category)) {
    const right = 'write S, SDD, I, R, NS, or NI where it cannot be told'
    throw wrong('category', place, `${JSON.stringify(category)} is not a category; ${right}`)
  }
  if (mic !== '') return { ...shared, method: 'MIC', raw: withUnit(mic, 'MIC', place) }
  if (zone !== '') return { ...shared, method: 'DISK', raw: withUnit(zone, 'DISK', place) }
  return { ...shared, method: null, raw: category }
}

function isCategory(text: string): boolean {
  return printedCategory(text) !== null || /^(ni|no_breakpoint)$/i.test(text)
}

const asked = {
  MIC: { column: 'mic', kind: 'mic', unit: 'mg/L', example: '<=0.5' },
  DISK: { column: 'zone', kind: 'zone', unit: 'mm', example: '18' },
} as const

function withUnit(text: string, method: keyof typeof asked, place: Place): string {
  const { column, kind, unit, example } = asked[method]
  const raw = /[a-z]$/i.test(text) ? text : `${text} ${unit}`
  if (readPrinted(raw, method).kind === kind) return raw
  throw wrong(column, place, `${JSON.stringify(text)} cannot be read; write a number of ${unit} such as ${example}`)
}
