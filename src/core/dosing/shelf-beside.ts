import type { Stock } from '#core/formulary/drug.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { convert } from '#core/units/quantity.ts'

type Item = Pick<BodyOf<'shelf-item'>, 'drug' | 'label' | 'strength' | 'outSince'>

/** Whether the shelf has what a row of the emergency sheet is drawn from. */
export type ShelfBeside =
  | { readonly kind: 'there' }
  /** Only in other strengths: a volume of the sheet is wrong for them. */
  | { readonly kind: 'other-strength'; readonly labels: readonly string[] }
  | { readonly kind: 'not-there' }

/**
 * What the shelf says of a row of the emergency sheet, which is drawn from a strength of its own. What is out of stock
 * is not there.
 *
 * @example shelfBeside({ drug: 'atropine', stock: quantity('0.54', 'mg/mL') }, shelf).kind // 'other-strength' beside 0.6 mg/mL
 */
export function shelfBeside(
  row: { readonly drug: string; readonly stock: Stock | null },
  shelf: readonly Item[],
): ShelfBeside {
  const items = shelf.filter(({ drug, outSince }) => drug === row.drug && outSince === null)
  if (items.length === 0) return { kind: 'not-there' }
  const { stock } = row
  const fits = ({ strength }: Item) =>
    stock === null || (strength !== null && convert(fromStored(strength), stock.unit)?.value.eq(stock.value) === true)
  return items.some(fits) ? { kind: 'there' } : { kind: 'other-strength', labels: items.map(({ label }) => label) }
}
