import type { Column, ColumnMeaning } from './mapping.ts'
import type { Place } from './report.ts'

/** A row with the meaning of each cell. */
export type Cells = {
  readonly line: number
  readonly cells: readonly { readonly column: Column; readonly text: string }[]
}

/** The cells of a row that say something of one meaning. */
export function cellsOf(row: Cells, means: ColumnMeaning): { readonly text: string; readonly place: Place }[] {
  return row.cells
    .filter((cell) => cell.column.means === means && cell.text !== '')
    .map((cell) => ({ text: cell.text, place: placeOf(row, cell.column) }))
}

export function placeOf(row: Cells, column: Column | null): Place {
  return { line: row.line, segment: null, field: column?.heading ?? null }
}
