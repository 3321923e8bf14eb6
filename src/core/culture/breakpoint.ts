import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { testMethods } from '#core/journal/kinds/specimen-result.ts'

export type TestMethod = (typeof testMethods)[number]

/**
 * What a row is. Only the first four may give a category; a wild-type limit and a proposal are information, and `none`
 * says that somebody looked and there is none.
 */
export type BreakpointKind = 'clinical' | 'human-derived' | 'human' | 'screen' | 'wild-type-limit' | 'proposal' | 'none'

export type BreakpointHost = Species | 'human' | 'any'
export const bodySites = ['soft-tissue', 'urinary', 'respiratory', 'genital', 'systemic', 'any'] as const
export type BodySite = (typeof bodySites)[number]
export const breakpointRoutes = ['oral', 'intravenous', 'other'] as const
export const conventions = ['CLSI', 'EUCAST'] as const
export const audiences = ['animals', 'people'] as const

/**
 * Where a category ends, as decimal text: mg/L for an MIC, whole mm for a zone. How the ends are compared is the
 * convention of the edition: by CLSI an MIC at or above `resistant` and a zone at or below it is R; by EUCAST only what
 * lies beyond it. A row without `resistant` knows no R: what is not S is NS.
 */
export type Ends = {
  readonly susceptible: string | null
  /** Every ladder step, or the zones, between the ends, with the name that the standard gives them. */
  readonly between: { readonly category: 'SDD' | 'I'; readonly steps: readonly BetweenStep[] } | null
  readonly resistant: string | null
}
/** One MIC step, or zones from–to; with the dose that the standard assumes for it. */
export type BetweenStep = { readonly value: string; readonly upTo?: string; readonly dose?: string }

export type Breakpoint = {
  /** Unlike within the edition, and for ever. */
  readonly id: string
  readonly kind: BreakpointKind
  readonly host: BreakpointHost
  readonly sites: readonly BodySite[]
  readonly route?: (typeof breakpointRoutes)[number]
  /** An organism or a group of them (content/susceptibility/organisms). */
  readonly organisms: string
  /** content/susceptibility/agents. */
  readonly agent: string
  readonly method: TestMethod
  /** As the standard writes it: `30 µg`, `10 units`. */
  readonly disk: string | null
  readonly ends: Sourced<Ends>
  /** The dose that S assumes, and how that is known. */
  readonly dose?: Sourced<string>
  /** The first year in whose edition the same row stood; absent, that of this edition. */
  readonly since?: number
  readonly remark?: string
}

/** One edition of one standard. It is never edited once cases were judged by it; a new edition is a new file. */
export type Edition = {
  /** `clsi-vet01s-7` */
  readonly id: string
  /** `CLSI VET01S`, `EUCAST` */
  readonly standard: string
  /** `ed7`, `v15.0` */
  readonly edition: string
  readonly year: number
  readonly convention: (typeof conventions)[number]
  readonly audience: (typeof audiences)[number]
  readonly current: boolean
  /** The clinic’s own copy, loaded by a person: it goes before ours of the same name. */
  readonly own?: true
  readonly rows: readonly Breakpoint[]
}
