import type { Stock } from '#core/formulary/drug.ts'
import { Quantity } from '#core/units/quantity.ts'
import type { PlannedLine } from './request.ts'

/** The product somebody holds, or mixed from: its label is what can be misread. */
export function productOf({ mixed, stock }: Pick<PlannedLine, 'mixed' | 'stock'>): Stock | undefined {
  return mixed?.from ?? stock
}

/** The strength of what was mixed. Example: 4 mL of 1 mg/mL in 500 mL are 0.008 mg/mL. */
export function strengthMixed({ from, product, final }: NonNullable<PlannedLine['mixed']>): Stock {
  return new Quantity(from.value.times(product.value).div(final.value), from.unit) as Stock
}
