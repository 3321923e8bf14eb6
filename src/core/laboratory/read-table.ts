import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import type { Cells } from './cells.ts'
import { splitRows } from './delimited.ts'
import { type Fault, Unreadable } from './fault.ts'
import { plainHeading } from './guess-mapping.ts'
import type { TableMapping } from './mapping.ts'
import type { LaboratoryReport } from './report.ts'
import { reportOfRows } from './rows-of-report.ts'
import type { LaboratoryTerms } from './terms.ts'

/**
 * Reads a table, long (a row for each drug) or wide (a column for each drug), by the mapping of its laboratory. A fault
 * anywhere and nothing of the table is taken. It never throws.
 *
 * @example readTable(text, mapping, terms) // { kind: 'answer', answer: [report, …] }
 */
export function readTable(
  text: string,
  mapping: TableMapping,
  terms: LaboratoryTerms,
): Outcome<readonly LaboratoryReport[], Fault> {
  try {
    return answer(groupsOf(cellsOf(text, mapping)).map((rows) => reportOfRows(rows, mapping, terms)))
  } catch (error) {
    if (error instanceof Unreadable) return refuse(error.fault)
    throw error
  }
}

function cellsOf(text: string, mapping: TableMapping): Cells[] {
  const [heading, ...rows] = splitRows(text, mapping.delimiter)
  const line = heading?.line ?? 1
  const places = new Map<string, number>()
  for (const [place, cell] of (heading?.cells ?? []).entries()) {
    const plain = plainHeading(cell)
    if (places.has(plain)) throw new Unreadable('column-twice', cell, { line })
    places.set(plain, place)
  }
  const columns = mapping.columns.filter(({ means }) => means !== 'nothing')
  for (const { heading: name } of columns) {
    if (!places.has(plainHeading(name))) throw new Unreadable('column-missing', name, { line })
  }
  const wide = columns.some(({ means }) => means === 'drug-values' || means === 'drug-categories')
  if (!columns.some(({ means }) => means === 'organism') || !(wide || columns.some(({ means }) => means === 'drug'))) {
    throw new Unreadable('column-missing', '', { line })
  }
  // A column of one drug without its name would be left out in silence.
  const nameless = columns.find(({ means, drug }) => means.startsWith('drug-') && (drug ?? '').trim() === '')
  if (nameless) throw new Unreadable('column-missing', nameless.heading, { line })
  const known = new Set(mapping.columns.map((column) => plainHeading(column.heading)))
  // A column that came since the mapping was made may hold what changes the meaning of the others.
  const strange = (heading?.cells ?? []).find((cell) => !known.has(plainHeading(cell)))
  if (strange !== undefined) throw new Unreadable('column-new', strange, { line })
  if (rows.length === 0) throw new Unreadable('empty', '', { line })
  return rows.map(({ line: at, cells }) => ({
    line: at,
    cells: columns.map((column) => ({ column, text: cells[places.get(plainHeading(column.heading)) ?? -1] ?? '' })),
  }))
}

/** Rows under one number are one report; without a number, those of one animal, side, tube and day. */
function groupsOf(rows: readonly Cells[]): Cells[][] {
  const groups = new Map<string, Cells[]>()
  const of = ({ cells }: Cells, means: string) => cells.find(({ column }) => column.means === means)?.text ?? ''
  for (const row of rows) {
    const accession = of(row, 'accession')
    const parts = accession === '' ? ['animal', 'owner', 'chip', 'label', 'side', 'site', 'collected'] : ['accession']
    const key = JSON.stringify(parts.map((part) => of(row, part)))
    groups.set(key, [...(groups.get(key) ?? []), row])
  }
  return [...groups.values()]
}
