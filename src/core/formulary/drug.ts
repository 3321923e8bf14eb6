import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Species } from '#core/animal/species.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import { type AnyQuantity, Quantity, quantity } from '#core/units/quantity.ts'
import type { DoseUnit, Group, Route, StockUnit, Use } from './words.ts'

/** A dose whose unit is known at run time only. */
export type Dose = { [U in DoseUnit]: Quantity<U> }[DoseUnit]
export type Stock = { [U in StockUnit]: Quantity<U> }[StockUnit]

/** Lowest and highest usual dose, in one unit. Both ends are information, never a default. */
export type DoseRange = { readonly low: Dose; readonly high: Dose }

/** Example: `range('0.1', '0.5', 'mg/kg')`. */
export function range<const U extends DoseUnit>(low: string, high: string, unit: U): DoseRange {
  return { low: quantity(low, unit) as unknown as Dose, high: quantity(high, unit) as unknown as Dose }
}

/** How often, in words; `hours` when it can be counted (shortest and longest gap). */
export type Interval = { readonly words: string; readonly hours?: readonly [string, string] }

/** A number a machine can hold the plan against, and the words that qualify it. */
export type Maximum = {
  readonly limit: AnyQuantity
  /** A second limit of the same dose, such as one per kilogram beside one for the animal: the lower one counts. */
  readonly also?: AnyQuantity
  readonly words?: string
}
/** What may be given in all: per day, per course, or only in words. */
export type Cumulative = {
  readonly limit?: AnyQuantity
  readonly per: 'day' | 'course' | 'animal'
  /** A day’s limit that is a mark to ask at, not one to refuse at. */
  readonly asks?: true
  /** The longest course in days, when the words say one: beyond it a person is asked. */
  readonly days?: number
  readonly words: string
}

export type Divides = 'whole' | 'halves' | 'quarters' | 'unknown'
/** One tablet size. Whether it may be cut is unknown until a source says so. */
export type TabletProduct = {
  readonly strength: Quantity<'mg'>
  readonly divides: Divides
  /** Where the label itself rounds; absent, nobody here read it, and every answer that rounds says so. */
  readonly rounds?: 'up' | 'down'
  readonly words?: string
}
export type StockProduct = {
  readonly strength?: Stock
  readonly words?: string
  /** Kills when it runs as it is; the strength that runs is that of the bag it was mixed into. */
  readonly neverUndiluted?: true
}

/** When something applies to this animal. Everything here can be checked by a machine. */
export type When =
  | { readonly kind: 'any-of'; readonly words: readonly AnimalWord[] }
  | { readonly kind: 'all-of'; readonly words: readonly AnimalWord[] }
  | { readonly kind: 'lighter-than'; readonly weight: Quantity<'kg'> }
  | { readonly kind: 'younger-than'; readonly months: number; readonly only?: AnimalWord }
  | { readonly kind: 'given-within'; readonly drug: string; readonly time: Quantity<'min'> }
  | { readonly kind: 'given-at-least'; readonly drug: string; readonly dose: Quantity<'mg/kg'> }

export type Exclusion = { readonly when: When; readonly because: string }
/** A caution without `when` is always printed; with it, it becomes a finding when it applies. */
export type Caution = { readonly words: string; readonly when?: When }

export type DoseRow = {
  readonly species: Species
  readonly use: Use
  readonly routes: readonly Route[]
  /** The bracket behind the route ("EU label"): part of the row's key. */
  readonly qualifier?: string
  /** Formulations that must never be interchanged are rows of their own. */
  readonly formulation?: string
  readonly range: Sourced<DoseRange>
  /** Ranges of sources that disagree, kept and not averaged. */
  readonly otherRanges?: readonly Sourced<DoseRange & { readonly words?: string }>[]
  readonly interval: Sourced<Interval>
  /** Intervals of sources that disagree, kept beside the one that is used. */
  readonly otherIntervals?: readonly Sourced<Interval>[]
  /** Infusions: what is given at once before it. Information, never a default. */
  readonly loading?: Sourced<DoseRange>
  readonly maxSingle?: Sourced<Maximum>
  readonly maxCumulative?: Sourced<Cumulative>
  readonly stocks: Sourced<readonly StockProduct[]>
  readonly tablets?: Sourced<readonly TabletProduct[]>
  readonly cautions: Sourced<readonly Caution[]>
  readonly exclusions: Sourced<readonly Exclusion[]>
  /** Exclusions that only a person can see, such as "never into a vein". */
  readonly neverByHand?: readonly string[]
}

/** A species (or one use in it) without a dose, said aloud. */
export type NoDose = Provenance & {
  readonly species: Species
  /** Absent: for every use. */
  readonly use?: Use
  /** Only this formulation, which has doses of its own elsewhere. */
  readonly formulation?: string
  /** `never`: forbidden. `no-dose-found`: nobody here knows a dose. */
  readonly why: 'never' | 'no-dose-found'
  readonly because: string
}

/** The most of one local anaesthetic, and how long a dose counts. */
export type LocalLimit = {
  readonly limits: Readonly<Record<Species, Sourced<Quantity<'mg/kg'>>>>
  readonly washout: Sourced<Quantity<'h'>>
}
/** A local anaesthetic's share of the one ceiling that belongs to the animal. */
export type LocalAnaesthetic = LocalLimit & {
  readonly otherLimits?: readonly (Sourced<Quantity<'mg/kg'>> & { readonly species: Species })[]
  /** Formulations that are counted against a limit of their own. */
  readonly formulations?: readonly (LocalLimit & { readonly formulation: string })[]
}

/** The limit that counts for this formulation: its own, or that of the usual product. */
export function localLimit(drug: Drug, formulation: string | undefined): LocalLimit | undefined {
  const local = drug.localAnaesthetic
  return local?.formulations?.find((own) => own.formulation === formulation) ?? local
}

export type Drug<Id extends string = string> = {
  /** One id per active substance; breakpoints, tiers and interactions join on it. */
  readonly id: Id
  readonly name: string
  readonly aliases: readonly string[]
  readonly class: string
  readonly groups: readonly Group[]
  readonly doses: readonly DoseRow[]
  readonly none: readonly NoDose[]
  readonly localAnaesthetic?: LocalAnaesthetic
}

/**
 * One drug of the formulary. Throws when a row contradicts itself, so that a slip in a file is seen at once.
 *
 * @example export const exampline = drug({ id: 'exampline', name: 'Exampline', ... })
 */
export function drug<const Id extends string>(facts: Drug<Id>): Drug<Id> {
  for (const row of facts.doses) {
    const { low, high } = row.range.value
    if (low.unit !== high.unit) throw new Error(`${facts.id}: ${low.unit} and ${high.unit} in one range.`)
    if (low.value.gt(high.value)) throw new Error(`${facts.id}: the range ${low} to ${high} runs backwards.`)
    if (row.routes.length === 0) throw new Error(`${facts.id}: a row has no route.`)
  }
  return facts
}

/** The words that name a row: `premed, IM or IV, in ug/kg`. Two rows of one drug and species never share them. */
export function rowKey(row: DoseRow): string {
  const bracket = row.qualifier ? ` (${row.qualifier})` : ''
  const form = row.formulation ? `, ${row.formulation}` : ''
  return `${row.use}, ${row.routes.join(' or ')}${bracket}${form}, in ${row.range.value.low.unit}`
}

/** The drug with this id, name or alias, or undefined. */
export function drugById(drugs: readonly Drug[], name: string): Drug | undefined {
  return namesOf(drugs).get(name.trim().toLowerCase())
}

/** Whether some row of a drug is for an infection; a drug that the formulary does not hold is none. */
export function isAntibiotic(drugs: readonly Drug[], id: string): boolean {
  return drugById(drugs, id)?.doses.some(({ use }) => use.startsWith('antibiotic')) ?? false
}

/** Every id, name and alias of a list, worked out once: a plan asks for each drug many times. */
const known = new WeakMap<readonly Drug[], ReadonlyMap<string, Drug>>()

function namesOf(drugs: readonly Drug[]): ReadonlyMap<string, Drug> {
  const before = known.get(drugs)
  if (before) return before
  const names = new Map<string, Drug>()
  for (const drug of drugs)
    for (const name of [drug.id, drug.name.toLowerCase(), ...drug.aliases.map((alias) => alias.toLowerCase())])
      if (!names.has(name)) names.set(name, drug)
  known.set(drugs, names)
  return names
}

/** A quantity that may be any dose; undefined when its unit is no dose unit. */
export function asDose(value: AnyQuantity, units: readonly DoseUnit[]): Dose | undefined {
  return units.some((unit) => unit === value.unit) ? (new Quantity(value.value, value.unit) as Dose) : undefined
}
