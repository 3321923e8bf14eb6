import type { Temporal } from 'temporal-polyfill'
import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Species } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { Dose, DoseRange, DoseRow, Drug, Stock } from '#core/formulary/drug.ts'
import type { Route, Use } from '#core/formulary/words.ts'
import type { AnyQuantity, Quantity } from '#core/units/quantity.ts'
import type { DoseFinding } from './findings.ts'
import type { Chosen, DosePolicy, Tablet, UsualPlan } from './plan.ts'
import type { DosingRules } from './rules.ts'
import type { Syringe } from './syringe.ts'

export type DosedAnimal = {
  readonly species: Species
  readonly weight?: Quantity<'kg'>
  readonly weightIs?: 'measured' | 'estimated'
  readonly weighedAt?: Temporal.Instant
  readonly previousWeight?: Quantity<'kg'>
  /** Who weighed again and stands for a weight that looks impossible. */
  readonly weightConfirmed?: { readonly by: string; readonly reason: string }
  readonly ageMonths?: number
  /** Body condition on the nine-point scale. */
  readonly bodyCondition?: number
  readonly conditions: readonly AnimalWord[]
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
  /** Set when `drug` is only what the box or the letter says, and nobody has settled which active it holds. */
  readonly unsettled?: { readonly route: string }
  /** Put on ear, eye or skin: what is dangerous only inside the body does not count from there. */
  readonly onSurface?: boolean
}

export type PlannedLine = {
  readonly id: string
  readonly drug: string
  readonly use: Use
  readonly route?: Route
  readonly qualifier?: string
  readonly formulation?: string
  readonly dose?: Dose
  readonly stock?: Stock
  readonly tablet?: Tablet
  readonly days?: number
  readonly over?: Quantity<'min'>
  readonly plan?: string
}

/** One planned dose as milligrams, for what lines mean to each other. */
export type PlannedMass = {
  readonly line: string
  readonly drug: Drug
  readonly row: DoseRow
  readonly mass: Quantity<'mg'>
}

export type DoseRequest = {
  readonly animal: DosedAnimal
  readonly given: readonly Given[]
  readonly at?: Temporal.Instant
  readonly plan?: string
  readonly lines: readonly PlannedLine[]
}

/** Everything the engine is told besides the request. Nothing is looked up. */
export type DosingKnowledge = {
  readonly drugs: readonly Drug[]
  readonly rules: DosingRules
  readonly plans: readonly UsualPlan[]
  readonly policies: readonly DosePolicy[]
  readonly syringes?: readonly Syringe[]
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
}

export type Dilution = {
  readonly parts: number
  readonly strength: Stock
  readonly volume: Quantity<'mL'>
  readonly drawn: Quantity<'mL'>
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
  readonly secondPerson: boolean
}

export type RefusedLine = LineBase & { readonly verdict: 'refused' }
export type DrawnLine = LineBase & Measured & { readonly verdict: 'ok' | 'caution'; readonly dose: Dose }
export type DoseLine = RefusedLine | DrawnLine
