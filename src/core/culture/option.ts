import type { DoseFinding } from '#core/dosing/findings.ts'
import type { DoseLine, PlannedLine } from '#core/dosing/request.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { DrugReading } from './reading.ts'
import type { Stood } from './standing.ts'
import type { StewardshipTier } from './stewardship.ts'

/** How a drug stands against one isolate of the report. */
export type AgainstIsolate = Stood & {
  /** Key of the isolate. */
  readonly isolate: string
  readonly printed: string
  /** Absent where the drug was not tested against it. */
  readonly reading: DrugReading | null
}

/** Whether a dose of it can be worked out here. */
export type Dosing =
  | { readonly kind: 'rows' }
  /** The formulary holds no such drug. */
  | { readonly kind: 'no-drug' }
  /** The formulary holds it, and no course of it for this species. */
  | { readonly kind: 'no-row'; readonly because: string }
  | { readonly kind: 'forbidden'; readonly because: string }
  /** Nobody wrote the species of this animal down. */
  | { readonly kind: 'no-animal' }

/** One row of the formulary by which it could be given, with the answer of the dose engine. */
export type Way = {
  /** The key of the row. */
  readonly row: string
  readonly asked: PlannedLine
  readonly line: DoseLine
}

export type OptionFindingCode = 'dose-needed-over-most' | 'dose-needed-unread' | 'dose-below-needed'

export type CultureOption = {
  readonly agent: string
  readonly name: string
  /** The drug of the formulary. */
  readonly drug: string | null
  /** `doubt`: nothing forbids it, and nobody can say from this report that it works. */
  readonly verdict: 'could' | 'doubt' | 'cannot'
  readonly against: readonly AgainstIsolate[]
  /** The doses that the standard asks for where it is susceptible only at a dose. */
  readonly needs: readonly string[]
  readonly findings: readonly { readonly code: OptionFindingCode; readonly about: Readonly<Record<string, string>> }[]
  /** What the record of this animal says about the drug: bars first. */
  readonly inAnimal: readonly DoseFinding[]
  readonly dosing: Dosing
  readonly ways: readonly Way[]
  /** What it could do to an animal of this species, beyond what the record says. */
  readonly harms: readonly Sourced<string>[]
  readonly tier: StewardshipTier | null
}

/** Category A is for when nothing else is left; it stands behind a person's word for that. */
export function isReserved({ tier }: Pick<CultureOption, 'tier'>): boolean {
  return tier?.value.category === 'A'
}
