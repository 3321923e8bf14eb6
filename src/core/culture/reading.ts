import type { Provenance } from '#core/evidence/sourced.ts'
import type { Edition, TestMethod } from './breakpoint.ts'
import type { CultureFinding } from './findings.ts'

/** `NI`: cannot be told from what is printed. `no_breakpoint` is an answer too: nobody may guess R. */
export type Category = 'S' | 'SDD' | 'I' | 'R' | 'NS' | 'NI' | 'no_breakpoint'
/** Why the category is not the one that the number alone would give. */
export type ChangedBy = 'methicillin-resistance' | 'intrinsic' | 'inducible' | 'inferred' | 'beta-lactamase' | 'esbl'

/** Step of the search at which a breakpoint was found, in the stated order; steps 4 and 5 are fallbacks. */
export type ChoiceStep = 'same-organism' | 'group' | 'no-site' | 'human' | 'other-host'

/** Why an animal’s own kind has no row for what was tested. */
export type NoChoice = 'stated-none' | 'other-disk' | 'other-method' | 'urinary-only' | 'no-row'

export type UsedBreakpoint = {
  readonly edition: Edition['id']
  /** `CLSI VET01S ed7 (2024)` */
  readonly standard: string
  readonly row: string
  readonly step: ChoiceStep
  readonly host: string
  readonly site: string
  readonly organisms: string
  /** The ends with their signs, as the edition means them: `<=2`, `>=8`, `SDD 0.12; 0.25`. */
  readonly susceptible: string | null
  readonly between: string | null
  readonly resistant: string | null
  /** The dose this category needs, where the standard says one. */
  readonly dose: string | null
}

export type DrugReading = {
  /** Agent id, or null for a drug nobody knows; `printed` stands always. */
  readonly agent: string | null
  readonly printed: string
  readonly raw: string
  readonly method: TestMethod | null
  readonly category: Category
  /** What the number alone gave, when a rule changed it. */
  readonly before: Category | null
  readonly changedBy: ChangedBy | null
  /** How the rule that changed it is known. */
  readonly because?: Provenance
  /** For NI: every category it may be. */
  readonly possible: readonly Category[]
  readonly breakpoint: UsedBreakpoint | null
  /** Without a breakpoint: why. */
  readonly none?: NoChoice | null
  /** A human or other-host row and what it would say; it never fills the category. */
  readonly fallback: { readonly category: Category; readonly breakpoint: UsedBreakpoint } | null
  /** The laboratory’s own category, as printed. */
  readonly laboratory: string | null
  readonly flags: readonly string[]
}

export type Phenotype = {
  readonly methicillinResistant: 'yes' | 'presumed' | 'possible' | 'no' | 'not-tested' | 'not-applicable'
  /** `not-confirmed`: the screen was positive, the confirmation was not. */
  readonly esbl: 'confirmed' | 'not-confirmed' | 'screen-positive' | 'screen-negative' | 'not-tested' | 'not-applicable'
  readonly ampc: 'suspected' | 'no' | 'not-applicable'
  readonly carbapenemase: 'suspected' | 'no' | 'not-applicable'
  readonly multidrug: 'no' | 'MDR' | 'possible XDR' | 'possible PDR' | 'XDR' | 'PDR' | 'not-known'
  /** The categories that counted as non-susceptible, and how many were tested of how many. */
  readonly counted: readonly string[]
  readonly tested: number
  readonly of: number
}

export type IsolateReading = {
  readonly key: string
  readonly printed: string
  /** Organism id, or null when nobody knows it: then nothing is read. */
  readonly organism: string | null
  readonly results: readonly DrugReading[]
  readonly phenotype: Phenotype
  readonly findings: readonly CultureFinding[]
}
