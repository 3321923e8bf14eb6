import { type ColumnWords, dictionaryHead, neutralised } from '#content/wording/columns-of-ears.ts'
import { sheet } from './sheet.ts'

/** What every column of a CSV means, as a CSV beside it. */
export function dictionaryOf(columns: readonly ColumnWords[]): string {
  return sheet(
    dictionaryHead,
    [...columns, neutralised].map(({ column, means, unit, values }) => [column, means, unit, values]),
  )
}
