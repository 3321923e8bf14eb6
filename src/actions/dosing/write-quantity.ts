import type { Decimal } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'

export type QuantityAnswer = { readonly value: number; readonly unit: Unit }
type Written = { readonly value: Decimal; readonly unit: Unit }

/** A quantity as JSON says it, in full. */
export function write({ value, unit }: Written): QuantityAnswer {
  return { value: value.toNumber(), unit }
}

/** What a syringe really gives is shown to four places; nobody reads further. */
export function writeRounded({ value, unit }: Written): QuantityAnswer {
  const rounded = value.abs().lt('0.1') ? value.toSignificantDigits(4) : value.toDecimalPlaces(4)
  return { value: rounded.toNumber(), unit }
}
