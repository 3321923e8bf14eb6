import type { StoredQuantity } from '#core/journal/stored.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { unitBeside } from '#core/units/unit-words.ts'

/** A quantity for paper: no trailing nought, a leading nought before the point, the unit spelled. */
export function sayQuantity({ value, unit }: { readonly value: Decimal; readonly unit: Unit }): string {
  return `${plain(value)} ${unitBeside(value, unit)}`
}

/** The same for a quantity as it stands in an entry: "5.0" of an import is printed as 5, because 5.0 is read as 50. */
export function sayUnit({ value, unit }: StoredQuantity<Unit>): string {
  return sayQuantity({ value: new Decimal(value), unit })
}
