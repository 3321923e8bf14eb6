import type { z } from 'zod'
import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { answer, type Outcome } from '#core/outcome/outcome.ts'
import type { Decimal } from '#core/units/quantity.ts'

/** One named input of a formula. The unit of a bare number stands in the field's name and here. */
export type Field<Value> = {
  readonly schema: z.ZodType<Value>
  /** The unit of the number, or what kind of word is wanted. */
  readonly unit: string
  readonly optional: boolean
  /** The closed choice, when the field is one. */
  readonly choices?: readonly string[]
}

type Fields = Readonly<Record<string, Field<unknown>>>
type Read<F extends Fields> = { readonly [K in keyof F]: F[K] extends Field<infer Value> ? Value : never }

/** A weight band of a label: from and up to, both included. */
export type TabletBand = { readonly fromKg: string; readonly toKg: string; readonly tablets: string }
/** A patch for weights up to and including `toKg` (or below it); the last has no end. */
export type PatchBand = { readonly toKg: string | null; readonly included: boolean; readonly size: string }

/** The facts that table look-ups need; they come from content, never from a function. */
export type CalcFacts = {
  readonly bodySurface: Readonly<Record<Species, Sourced<Decimal>>>
  readonly labelBands: Readonly<Record<string, readonly Sourced<TabletBand>[]>>
  readonly patchSizes: readonly Sourced<PatchBand>[]
}

export type Calculated = {
  readonly value: Decimal
  readonly unit: string
  /** When the wording of the formula depends on the input (a convention that was chosen). */
  readonly formula?: string
  /** What stands behind the number, as text: "2 tablets of 40 mg". */
  readonly detail?: string
}

/** A normal no of a formula. `field` is the input that stands in the way. */
export type CalcRefusal = {
  readonly because:
    | 'units-do-not-match'
    | 'result-negative'
    | 'wrong-order'
    | 'target-above-stock'
    | 'no-such-product'
    | 'no-band-for-weight'
    | 'no-whole-tablets'
  readonly field: string
  readonly about: Readonly<Record<string, string>>
}

export type CalcOutcome = Outcome<Calculated, CalcRefusal>

/** One formula of the calculator, with its types erased so that all stand in one list. */
export type Operation = {
  readonly fields: Fields
  readonly formula: string
  /** Every unit the result may have. */
  readonly units: readonly string[]
  readonly run: (read: Readonly<Record<string, unknown>>, facts: CalcFacts) => CalcOutcome
}

/** Defines a formula; `run` sees its fields with their own types. The door has read them before. */
export function operation<const F extends Fields>(definition: {
  readonly fields: F
  readonly formula: string
  readonly units: readonly string[]
  readonly run: (read: Read<F>, facts: CalcFacts) => CalcOutcome
}): Operation {
  return { ...definition, run: (read, facts) => definition.run(read as Read<F>, facts) }
}

export function gives(value: Decimal, unit: string, more: Omit<Calculated, 'value' | 'unit'> = {}): CalcOutcome {
  return answer({ value, unit, ...more })
}
