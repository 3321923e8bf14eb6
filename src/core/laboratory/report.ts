import type { Side, Species } from '#core/animal/species.ts'
import type { isolateTests } from '#core/journal/kinds/specimen-result.ts'

/** Where something stands in what came in, so that a person finds it with a finger on the paper. */
export type Place = { readonly line: number; readonly segment: string | null; readonly field: string | null }

/** A number as read: its sign joined to it, `<=0.5`; the unit only where it is printed or a person said it. */
export type ReportedDrug = {
  /** As printed. */
  readonly drug: string
  /** The laboratory's code of it, where one is printed. */
  readonly code: string | null
  readonly value: string | null
  readonly unit: 'mg/L' | 'mm' | null
  readonly disk: string | null
  /** The laboratory's own category as printed. */
  readonly category: string | null
  readonly place: Place
}

export type ReportedTest = {
  readonly test: (typeof isolateTests)[number]
  readonly result: 'positive' | 'negative'
}

export type ReportedIsolate = {
  readonly key: string
  readonly organism: string
  readonly code: string | null
  readonly amount: string | null
  readonly drugs: readonly ReportedDrug[]
  readonly tests: readonly ReportedTest[]
}

/** The animal as the laboratory names it. Nothing of this says whose it is; two of them must fit a file. */
export type ReportedAnimal = {
  readonly name: string | null
  readonly owner: string | null
  readonly chip: string | null
  /** The species as we read it, and as printed. */
  readonly species: Species | null
  readonly speciesPrinted: string | null
  readonly born: string | null
}

/** What a person must say before it can be filed; nothing of it is guessed. */
export type Doubt = {
  readonly code: DoubtCode
  readonly about: Readonly<Record<string, string>>
  readonly place: Place
}
export const doubtCodes = [
  'status-not-said',
  'growth-not-said',
  'unit-not-said',
  'unit-unknown',
  'value-unclear',
  'side-not-said',
  'both-sides',
  'some-corrected-some-preliminary',
] as const
export type DoubtCode = (typeof doubtCodes)[number]

export type ReportStatus = 'preliminary' | 'final' | 'corrected'

/** One report as it stood in what came in: read, but neither recognised nor filed. */
export type LaboratoryReport = {
  readonly laboratory: string | null
  /** The laboratory's own number of it. */
  readonly accession: string | null
  /** What the sender wrote on the tube. */
  readonly label: string | null
  readonly animal: ReportedAnimal
  /** Dates as unambiguous text (`2026-03-01T14:20`), null when none is printed. */
  readonly collected: string | null
  readonly reported: string | null
  /** As printed. */
  readonly site: string | null
  readonly side: Side | 'BOTH' | null
  readonly status: ReportStatus | null
  readonly growth: 'none' | 'growth' | 'not-a-culture' | null
  /** Standard and edition as printed. */
  readonly standard: string | null
  readonly isolates: readonly ReportedIsolate[]
  /** Every line that is none of the above; nothing printed is dropped. */
  readonly text: readonly string[]
  readonly doubts: readonly Doubt[]
}
