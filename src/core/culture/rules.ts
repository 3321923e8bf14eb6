import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { AgentFamily } from './agent.ts'
import type { Edition, TestMethod } from './breakpoint.ts'

/** Agents by name, by family, or both; `except` are left out. */
export type AgentsMeant = {
  readonly agents?: readonly string[]
  readonly families?: readonly AgentFamily[]
  readonly except?: readonly string[]
}
/** Organisms or groups of them; `except` are members that the rule leaves out. */
export type OrganismsMeant = { readonly organisms: readonly string[]; readonly except?: readonly string[] }

/**
 * A limit of a test: an MIC in mg/L, or a zone in whole mm, with the sign of the standard. Of an MIC it is met at or
 * above, of a zone at or below (`<=`) or below (`<`).
 */
export type Limit = {
  readonly agent: string
  readonly method: TestMethod
  readonly disk?: string
  readonly sign: '>=' | '>' | '<=' | '<'
  readonly value: Sourced<string>
}

/** A test that tells methicillin resistance in these organisms. */
export type MethicillinTest = OrganismsMeant &
  Limit & {
    /** As printed: whose limit it is. */
    readonly standard: string
    readonly convention: Edition['convention']
    /** One that does not decide is kept beside it: where it says otherwise, the standards disagree and a gene test is asked for. */
    readonly decides: boolean
    /** At exactly this value the sources disagree: presumed, and a gene test is asked for. */
    readonly presumedAt?: string
  }

export type MethicillinRules = {
  readonly organisms: readonly string[]
  /** What a resistant isolate is called, by species; others `MR` and the name. */
  readonly names: Readonly<Record<string, string>>
  readonly tests: readonly MethicillinTest[]
  /** Never read in these, neither for the drug nor for methicillin. */
  readonly notUsed: readonly (OrganismsMeant & { readonly agent: string } & Provenance)[]
  /** What becomes R whatever the tube showed. */
  readonly becomesR: Sourced<AgentsMeant>
  /** R to one of these without any test of methicillin: possible, and a test is asked for. */
  readonly suspectedBy: Sourced<readonly string[]>
  /** Where it is not there: these read S without a row of their own, unless what is printed speaks against it. */
  readonly withoutIt: Sourced<AgentsMeant>
  /** R to one of these although it is not there: the laboratory is asked to repeat. */
  readonly repeatIfR: Sourced<readonly string[]>
  /** Penicillin R without it is a beta-lactamase: these are R. */
  readonly betaLactamase: Sourced<{ readonly tested: string; readonly becomesR: readonly string[] }>
}

/** Erythromycin R with clindamycin not R asks for a D-test. */
export type InducibleRules = {
  readonly organisms: readonly string[]
  readonly inducedBy: string
  readonly agent: string
  /** Read as R as long as nobody tested. */
  readonly untestedIsR: readonly string[]
  readonly because: Provenance
}

/** One drug tested for another. */
export type StandsFor = {
  readonly tested: string
  readonly of?: OrganismsMeant
  readonly reports: AgentsMeant
  /**
   * What carries over. `all` and `S` only where the other drug was not read by itself; `R` also against what its own
   * number says. `not-R` marks a category that must not be carried over, `nothing` that none may.
   */
  readonly carries: 'all' | 'S' | 'R' | 'nothing'
  /** Of a drug that carries S: R leaves the other drug open. */
  readonly openIfR?: boolean
  readonly because: Provenance
}

/** Always R in these organisms, or (`not-S`) never to be reported S. */
export type Intrinsic = OrganismsMeant &
  Provenance & {
    readonly drugs: AgentsMeant
    readonly verdict: 'R' | 'not-S' /** Alone; with another drug it may help. */
    readonly lowLevel?: boolean
  }

export type BetaLactamaseRules = {
  /** Any one of them met: the screen is positive. */
  readonly esblScreen: readonly (OrganismsMeant & Limit)[]
  /** Growing less beside clavulanate confirms. */
  readonly esblConfirmation: Sourced<{
    readonly pairs: readonly { readonly alone: string; readonly withInhibitor: string }[]
    readonly zoneGain: number
    readonly dilutionsFall: number
  }>
  /** Not offered once it is confirmed: a house rule. */
  readonly esblNotOffered: Sourced<readonly string[]>
  readonly ampcScreen: readonly (OrganismsMeant & Limit)[]
  readonly ampcWith: AgentsMeant
  readonly carbapenemase: Sourced<
    OrganismsMeant &
      AgentsMeant & {
        /** High in these by nature, without such an enzyme. */ readonly notToldBy: readonly (OrganismsMeant & {
          readonly agents: readonly string[]
        })[]
      }
  >
}

export type MultidrugList = OrganismsMeant &
  Provenance & {
    readonly id: string
    readonly categories: readonly {
      readonly id: string
      readonly agents: readonly string[] /** Counted by methicillin resistance. */
      readonly byMethicillin?: boolean
    }[]
    /** By definition, however little else is resistant. */
    readonly methicillinResistantIsMultidrug?: boolean
  }
export type MultidrugRules = {
  readonly least: Sourced<number>
  /** Extensively resistant: not more categories than this are left. */
  readonly left: number
  /** An incomplete panel says "possible XDR" only when it tested this share of the categories or more. */
  readonly possibleFrom: Sourced<number>
  readonly lists: readonly MultidrugList[]
}

/** A combination that some houses print as the sum of its parts; such a number is not read as one part. */
export type PrintedSum = Sourced<{
  readonly agent: string
  readonly amounts: readonly string[]
  readonly partnerIsLarger: boolean
}>

export type ReadingRules = {
  readonly methicillin: MethicillinRules
  readonly inducible: InducibleRules
  readonly standsFor: readonly StandsFor[]
  readonly intrinsic: readonly Intrinsic[]
  readonly betaLactamases: BetaLactamaseRules
  readonly multidrug: MultidrugRules
  readonly printedSums: readonly PrintedSum[]
}
