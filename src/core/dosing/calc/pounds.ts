import { Decimal } from '#core/units/quantity.ts'
import { units } from '#core/units/unit.ts'

/**
 * Kilograms in one pound, exactly (definition of 1959). Published answers were rounded with 2.2 lb per kg;
 * ours are exact and agree within the tolerance of each published row.
 */
export const kilogramsPerPound = new Decimal(units['[lb_av]'].per).div(units.kg.per)

/** Example: `kilograms(new Decimal(27))` is 12.24699399. */
export function kilograms(pounds: Decimal): Decimal {
  return pounds.times(kilogramsPerPound)
}
