import type { Temporal } from 'temporal-polyfill'
import type { BloodGroup } from '#core/animal/blood-group.ts'
import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Species } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { Dose, DoseRange, DoseRow, Drug, Stock } from '#core/formulary/drug.ts'
import type { Route, Use } from '#core/formulary/words.ts'
import type { AnyQuantity, Decimal, Quantity } from '#core/units/quantity.ts'
import type { Poured } from './container.ts'
import type { Drip } from './drops.ts'
import type { DoseFinding } from './findings.ts'
import type { FluidPlan } from './fluids.ts'
import type { OwnDefaults } from './own-default.ts'
import type { Chosen, DosePolicy, How, ShelfInUse, UsualPlan } from './plan.ts'
import type { DosingRules } from './rules.ts'
import type { Syringe } from './syringe.ts'
import type { Dilution } from './volume.ts'

export type DosedAnimal = {
  readonly species: Species
  readonly weight?: Quantity<'kg'>
  readonly weightIs?: 'measured' | 'estimated'
  readonly weighedAt?: Temporal.Instant
  readonly previousWeight?: Quantity<'kg'>
  /** Who weighed again and stands for a weight that looks impossible. */
  readonly weightConfirmed?: { readonly by: string; readonly reason: string }
  readonly ageMonths?: number
  /** As people write it; a breed that no rule knows is not judged by. */
  readonly breed?: string
  /** Body condition on the nine-point scale. */
  readonly bodyCondition?: number
  readonly conditions: readonly AnimalWord[]
  /** Absent when nobody typed it: no group is ever assumed. */
  readonly bloodGroup?: BloodGroup
  readonly transfusedBefore?: 'yes' | 'no'
}

/** Something this animal has already had. It can always be recorded; here it is only counted. */
export type Given = {
  readonly drug: string
  /** Absent when nobody wrote it down: then it can never be counted as little. */
  readonly amount?: AnyQuantity
  readonly stock?: Stock
  readonly at?: Temporal.Instant
  readonly route?: Route
  readonly use?: Use
  /** Set when `at` is the end of a day, a month or a year that somebody named: it may lie after the plan and be right. */
  readonly isCoarse?: boolean
  /** Set when `drug` is only what the box or the letter says, and nobody has settled which active it holds. */
  readonly unsettled?: { readonly route: string }
  /** Put on ear, eye or skin: what is dangerous only inside the body does not count from there. */
  readonly onSurface?: boolean
}

export type PlannedLine = How & {
  readonly id: string
  readonly drug: string
  readonly use: Use
  readonly route?: Route
  readonly qualifier?: string
  readonly dose?: Dose
  readonly stock?: Stock
  readonly plan?: string
  /** A loss of water to be made good beside the rate of a fluid. */
  readonly deficit?: { readonly percent: Quantity<'%'>; readonly over: Quantity<'h'> }
  /** Blood by what it is to reach instead of by weight. */
  readonly goal?: { readonly now: Quantity<'%'>; readonly aim: Quantity<'%'>; readonly donorPcv: Quantity<'%'> }
  /** Red cells: the group of the donor, and what the cross-match said. */
  readonly donor?: BloodGroup
  readonly crossMatch?: 'compatible' | 'incompatible'
}

/** Who declared an emergency, and why; the second name follows within a day. */
export type Emergency = {
  readonly by: string
  readonly reason: string
  /** What it is to lift, by name: drugs, classes or checks. Absent: every block that may be lifted. */
  readonly lifts?: string
  /** When, as it is said; absent where only this question declares it. */
  readonly at?: string
}

/** One planned dose as milligrams or millilitres, for what lines mean to each other. */
export type PlannedAmount = {
  readonly line: string
  readonly drug: Drug
  readonly row: DoseRow
  readonly amount: Counted
  /** An infusion that nobody gave an end: what it adds in each hour, none of it counted in `amount`. */
  readonly perHour?: Decimal
}

/** What a day is summed in: milligrams of a drug, millilitres of a fluid. */
export type Counted = Quantity<'mg'> | Quantity<'mL'>

/** Where the haematocrit stands, and how low somebody lets it fall. */
export type Haematocrit = { readonly start: Quantity<'%'>; readonly lowest: Quantity<'%'> }

export type DoseRequest = {
  readonly animal: DosedAnimal
  readonly given: readonly Given[]
  readonly at?: Temporal.Instant
  readonly plan?: string
  /** Somebody declared an emergency: blocks are lifted, doubts about unit or identity are not. */
  readonly emergency?: Emergency
  readonly lines: readonly PlannedLine[]
}

/** Everything the engine is told besides the request. Nothing is looked up. */
export type DosingKnowledge = {
  readonly drugs: readonly Drug[]
  readonly rules: DosingRules
  readonly plans: readonly UsualPlan[]
  readonly policies: readonly DosePolicy[]
  readonly syringes?: readonly Syringe[]
  /** The defaults this clinic changed; they stand in `rules` and `syringes` already, and are said where they act. */
  readonly own?: OwnDefaults
  /** The tool's own factors of the surface, to be said beside the clinic's. */
  readonly toolSurface?: DosingRules['bodySurface']
  /** What stands on the shelf, in the clinic's own days; without it nothing is said about dates and stock. */
  readonly shelf?: ShelfInUse
}

/** Where a dose came from: never from the engine. */
export type ChosenBy =
  | { readonly kind: 'person' }
  | ({ readonly kind: 'plan'; readonly plan: string } & Chosen)
  | ({ readonly kind: 'policy' } & Chosen)

export type TabletAnswer = {
  /** Tablets for one dose, in steps the product allows. */
  readonly each: Quantity<'{tablet}'>
  readonly strength: Quantity<'mg'>
  /** For the whole course, when days and a countable interval are known. */
  readonly total?: Quantity<'{tablet}'>
  /** Set when the label's own table of weights decided, not a rule for rounding. */
  readonly label?: { readonly fromKg: string; readonly toKg: string }
}

/** What leaves the clinic for a course: so many doses, and whole tablets or millilitres for them. */
export type Dispensed = {
  readonly doses: number
  readonly days: number
  readonly amount: Quantity<'{tablet}'> | Quantity<'mL'>
}

/** A loading dose, worked out like any other single dose. */
export type Loading = {
  readonly dose: Dose
  readonly amount: AnyQuantity
  readonly volume?: Quantity<'mL'>
  readonly drawn?: Quantity<'mL'>
  readonly delivered?: Dose
  readonly dilution?: Dilution
  readonly rate?: Quantity<'mL/h'>
}

type LineBase = {
  readonly id: string
  readonly drug: string
  readonly use: Use
  readonly route?: Route
  readonly dose?: Dose
  readonly chosenBy?: ChosenBy
  /** The row's range and interval, to be shown beside the dose; never a default. */
  readonly range?: DoseRange
  readonly interval?: string
  readonly findings: readonly DoseFinding[]
  readonly sources: readonly Provenance[]
  readonly cautions: readonly string[]
  readonly never: readonly string[]
  readonly rows: readonly string[]
}

/** What can be drawn up. A refused line has none of it. */
export type Measured = {
  readonly amount: AnyQuantity
  readonly dosingWeight?: Quantity<'kg'>
  readonly bodySurface?: Quantity<'m2'>
  readonly volume?: Quantity<'mL'>
  readonly drawn?: Quantity<'mL'>
  readonly delivered?: Dose
  readonly dilution?: Dilution
  readonly tablets?: TabletAnswer
  /** Infusions: how fast, and what runs in over the stated time. */
  readonly rate?: Quantity<'mL/h'>
  readonly total?: AnyQuantity
  /** An infusion in both ways it is said; a slip between them is sixtyfold. */
  readonly perHour?: AnyQuantity
  readonly perMinute?: AnyQuantity
  readonly poured?: Poured
  readonly loading?: Loading
  readonly fluid?: FluidPlan
  readonly drip?: Drip
  readonly dispense?: Dispensed
  readonly secondPerson: boolean
}

export type RefusedLine = LineBase & { readonly verdict: 'refused' }
export type DrawnLine = LineBase & Measured & { readonly verdict: 'ok' | 'caution'; readonly dose: Dose }
export type DoseLine = RefusedLine | DrawnLine
