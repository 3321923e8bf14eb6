import type { Species } from '#core/animal/species.ts'
import type { Day } from '#core/evidence/sourced.ts'
import type { Divides, Dose, Stock } from '#core/formulary/drug.ts'
import type { Route, Use } from '#core/formulary/words.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { Quantity } from '#core/units/quantity.ts'

/** Who chose a number, when, and why: without these three a number is no choice. */
export type Chosen = { readonly reason: string; readonly person: string; readonly date: Day }

/** One line of a usual plan: one dose, chosen by a person. */
export type UsualPlanLine = Chosen & {
  readonly id: string
  readonly drug: string
  readonly use: Use
  readonly route?: Route
  readonly qualifier?: string
  readonly formulation?: string
  readonly dose: Dose
  readonly stock?: Stock
  readonly tablet?: Tablet
  readonly over?: Quantity<'min'>
  readonly days?: number
}

/** A named plan of the clinic ("our usual plans"). */
export type UsualPlan = {
  readonly name: string
  readonly title: string
  readonly species: Species
  readonly lines: readonly UsualPlanLine[]
}

/** A default dose that this clinic set for one drug, species and use. */
export type DosePolicy = Chosen & {
  readonly drug: string
  readonly species: Species
  readonly use: Use
  readonly route?: Route
  readonly qualifier?: string
  readonly formulation?: string
  readonly dose: Dose
}

/** A tablet in hand. Cut only as far as the product is known to allow. */
export type Tablet = { readonly strength: Quantity<'mg'>; readonly divides?: Divides }

/** The shelf as a plan is judged with it: its products, and the zone in which their days are meant. */
export type ShelfInUse = { readonly items: readonly BodyOf<'shelf-item'>[]; readonly zone: string }
