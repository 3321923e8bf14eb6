import type { Species } from '#core/animal/species.ts'
import type { Day } from '#core/evidence/sourced.ts'
import type { Divides, Dose, Stock } from '#core/formulary/drug.ts'
import type { Route, Use } from '#core/formulary/words.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { Quantity } from '#core/units/quantity.ts'
import type { Container } from './container.ts'

/** Who chose a number, when, and why: without these three a number is no choice. */
export type Chosen = { readonly reason: string; readonly person: string; readonly date: Day }

/** How a dose is given besides drug, route, strength and dose. Nothing of it is ever filled in. */
export type How = {
  readonly formulation?: string
  readonly tablet?: Tablet
  /** What the label of the bottle in hand says; absent while nobody has read it. */
  readonly xylitolFree?: boolean
  readonly days?: number
  readonly over?: Quantity<'min'>
  /** The gap between two doses of a course, when the formulary leaves a choice. */
  readonly every?: Quantity<'h'>
  /** The marks of the syringe in hand, such as the one that comes with an oral liquid. */
  readonly mark?: Quantity<'mL'>
  /** The bag or syringe an infusion runs from. */
  readonly container?: Container
  /** Given at once before an infusion, so that it need not climb to its level for hours. */
  readonly loading?: { readonly dose: Dose; readonly over?: Quantity<'min'> }
  /** The gravity set in hand; without it nobody counts drops. */
  readonly set?: Quantity<'[drp]/mL'>
  /** How somebody mixed what is in hand: so much of a product made up to so much. */
  readonly mixed?: { readonly from: Stock; readonly product: Quantity<'mL'>; readonly final: Quantity<'mL'> }
}

/** One line of a usual plan: one dose, chosen by a person. */
export type UsualPlanLine = Chosen &
  How & {
    readonly id: string
    readonly drug: string
    readonly use: Use
    readonly route?: Route
    readonly qualifier?: string
    readonly dose: Dose
    readonly stock?: Stock
    /** The product of the shelf that stock or tablet are of. */
    readonly shelfItem?: string
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
export type Tablet = {
  readonly strength: Quantity<'mg'>
  readonly divides?: Divides
  /** The way the label in hand rounds, when somebody read it. */
  readonly rounds?: 'up' | 'down'
}

/** The shelf as a plan is judged with it: its products, and the zone in which their days are meant. */
export type ShelfInUse = { readonly items: readonly BodyOf<'shelf-item'>[]; readonly zone: string }
