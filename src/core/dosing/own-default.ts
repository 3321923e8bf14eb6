import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { Decimal } from '#core/units/quantity.ts'
import type { Syringe } from './syringe.ts'

/** A default this clinic changed: the value, and who set it, when and why. */
export type OwnDefault<Value> = Sourced<Value> & {
  readonly by: string
  readonly on: string
  readonly because: string
}

export type OwnDefaults = {
  readonly surface: Readonly<Partial<Record<Species, OwnDefault<Decimal>>>>
  readonly syringes?: OwnDefault<readonly Syringe[]>
  /** Set, and not to be read, or set twice: the tool's own holds, and every plan says so. */
  readonly unreadable: readonly { readonly policy: string; readonly value: string }[]
}
