import { findDelimiter, splitRows } from '#core/laboratory/delimited.ts'
import { Unreadable } from '#core/laboratory/fault.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type EditionColumn, type EditionFault, type EditionInFile, editionColumns } from './edition-column.ts'
import { type FileRow, headOf, rowOf } from './edition-row.ts'
import type { SusceptibilityFacts } from './facts.ts'

/** Columns that may be left out of the file. */
const optional: readonly EditionColumn[] = ['route', 'dose', 'kind', 'remark']

type Names = Pick<SusceptibilityFacts, 'agents' | 'organisms'>

/**
 * A clinic's own edition of breakpoints from its file: all of it, or every fault with its line and column and nothing.
 * The form of the file stands in docs/breakpoint-file.md.
 *
 * @example readEditionFile(text, susceptibility) // a refusal: [{ code: 'drug-unknown', line: 14, column: 'drug', … }]
 */
export function readEditionFile(text: string, names: Names): Outcome<EditionInFile, readonly EditionFault[]> {
  const table = tableOf(text)
  if (!Array.isArray(table)) return refuse([table])
  const [heading, ...lines] = table
  const columns = (heading?.cells ?? []).map((cell) => cell.trim().toLowerCase())
  const wrong = headingFaults(columns)
  if (wrong.length > 0) return refuse(wrong)
  const rows = lines.map(({ line, cells }): FileRow => {
    const of = (column: EditionColumn) => cells[columns.indexOf(column)]?.trim() ?? ''
    return { line, of }
  })
  const [first] = rows
  if (!first) return refuse([{ code: 'no-rows', line: 1, column: null, found: '' }])
  const head = headOf(first)
  if (head.kind === 'refusal') return refuse(head.refusal)
  const read = rows.map((row) => rowOf(row, first, head.answer, names))
  const faults = read.flatMap((one) => (one.kind === 'refusal' ? one.refusal : []))
  const bodies = read.flatMap((one) => (one.kind === 'answer' ? [one.answer] : []))
  const twice = repeated(rows, bodies)
  if (faults.length > 0 || twice.length > 0) return refuse([...faults, ...twice])
  return answer({ ...head.answer, rows: bodies })
}

function tableOf(text: string) {
  try {
    return splitRows(text, findDelimiter(text))
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error
    const { code, found, place } = error.fault
    return { code: 'not-a-table', line: place.line, column: null, found, why: code } satisfies EditionFault
  }
}

function headingFaults(columns: readonly string[]): EditionFault[] {
  const known: readonly string[] = editionColumns
  return [
    ...columns.flatMap((column, at): EditionFault[] => {
      if (!known.includes(column)) return [{ code: 'column-unknown', line: 1, column: null, found: column }]
      return columns.indexOf(column) === at ? [] : [{ code: 'column-twice', line: 1, column: null, found: column }]
    }),
    ...editionColumns
      .filter((column) => !columns.includes(column) && !optional.includes(column))
      .map((column): EditionFault => ({ code: 'column-missing', line: 1, column, found: '' })),
  ]
}

/** Two rows of the same thing: which of them counts is for a person to say. Only asked when every row was read. */
function repeated(rows: readonly FileRow[], bodies: EditionInFile['rows']): EditionFault[] {
  if (bodies.length !== rows.length) return []
  const seen = new Map<string, number>()
  return bodies.flatMap(({ susceptible: _, between: __, resistant: ___, dose: ____, remark: _____, ...of }, at) => {
    const key = JSON.stringify(of)
    const before = seen.get(key)
    const line = rows[at]?.line ?? 0
    if (before === undefined) seen.set(key, line)
    return before === undefined ? [] : [{ code: 'row-twice', line, column: null, found: String(before) } as const]
  })
}
