import { z } from 'zod'
import { Decimal, Quantity } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'

/** A quantity as it stands in a journal body: decimal text and a unit of the given ones, never converted. */
export function storedQuantity<const U extends Unit>(...wanted: readonly [U, ...U[]]) {
  return z.strictObject({
    value: z.string().regex(/^-?\d+(\.\d+)?$/, 'must be a plain decimal as text, like "12.5"'),
    unit: z.enum(wanted),
  })
}

export type StoredQuantity<U extends Unit> = { readonly value: string; readonly unit: U }

/** The quantity behind its stored form. */
export function fromStored<U extends Unit>(stored: StoredQuantity<U>): Quantity<U> {
  return new Quantity(new Decimal(stored.value), stored.unit)
}
