import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { Stock } from '#core/formulary/drug.ts'
import type { Route } from '#core/formulary/words.ts'
import { type Quantity, quantity } from '#core/units/quantity.ts'

/** What is shouted, in the order of the sheet. */
export const emergencyCalls = [
  'no-pulse',
  'fast-wide-rhythm',
  'slow-rhythm',
  'undo',
  'bleeding',
  'local-anaesthetic-toxicity',
  'airway',
] as const
export type EmergencyCall = (typeof emergencyCalls)[number]

/** Doses of the sheet are by weight. */
export type EmergencyDose = {
  [U in 'mg/kg' | 'ug/kg' | 'mL/kg' | 'mmol/kg' | '[iU]/kg']: Quantity<U>
}['mg/kg' | 'ug/kg' | 'mL/kg' | 'mmol/kg' | '[iU]/kg']

/** Example: `dose('0.01', 'mg/kg')`, as one of the doses a row may hold. */
export function emergencyDose(value: string, unit: EmergencyDose['unit']): EmergencyDose {
  return quantity(value, unit) as EmergencyDose
}

/** Example: `stock('20', 'mg/mL')`, as one of the strengths a bottle may have. */
export function emergencyStock(value: string, unit: Stock['unit']): Stock {
  return quantity(value, unit) as Stock
}

/** What must not be aboard for a row to be given. */
export type Suspicion = 'local-anaesthetic-toxicity'

/** An infusion that follows the bolus, with or without an end. */
export type Follow = {
  readonly rate: Quantity<'ug/kg/min'> | Quantity<'mL/kg/min'>
  readonly minutes?: Quantity<'min'>
}

/** The same drug as another edition gives it: kept, so that an old chart on the wall can be recognised. */
export type OtherEdition = Sourced<EmergencyDose> & { readonly edition: string }

/** One drug of the sheet: one number, chosen, with the edition it comes from and why. */
export type EmergencyRow = {
  /** The substance, as the formulary names it. */
  readonly drug: string
  /** The name that is printed; a product of one strength says it. */
  readonly name: string
  readonly species: readonly Species[]
  readonly routes: readonly Route[]
  readonly dose: Sourced<EmergencyDose>
  readonly edition: string
  readonly reason: string
  readonly otherEditions: readonly OtherEdition[]
  /** Null when the dose is a volume of the product itself. */
  readonly stock: Stock | null
  /** What a volume too small to draw is diluted with; null when this product must not be diluted. */
  readonly diluent: string | null
  /** How it is given and how often, in one line. */
  readonly give: string
  readonly follow?: Sourced<Follow>
  readonly barredBy?: Suspicion
}

/** One thing to do, without a dose. */
export type EmergencyStep = Sourced<string> & { readonly species: readonly Species[] }

export type EmergencyGroup = {
  readonly call: EmergencyCall
  readonly steps: readonly EmergencyStep[]
  readonly rows: readonly EmergencyRow[]
}
