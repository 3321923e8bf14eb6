import type { Provenance } from '#core/evidence/sourced.ts'
import type { Finding, Level } from '#core/outcome/finding.ts'
import type { ValueDoubt } from './printed-value.ts'

/** What is to be said of an isolate; each sentence is in content/wording. */
export type CultureCode =
  | 'organism-not-recognised'
  | 'drug-not-recognised'
  | 'named-by-group-only'
  | 'not-a-bacterium'
  | 'panel-does-not-reach'
  | 'laboratory-differs'
  | 'laboratory-differs-by-edition'
  | 'proposed-value-lower'
  | 'same-drug-differs'
  | 'methicillin-not-tested'
  | 'strain-named-resistant'
  | 'methicillin-resistant'
  | 'methicillin-presumed'
  | 'methicillin-possible'
  | 'methicillin-suspected'
  | 'methicillin-standards-disagree'
  | 'methicillin-tests-disagree'
  | 'repeat-beta-lactam'
  | 'beta-lactamase'
  | 'inducible-resistance'
  | 'd-test-missing'
  | 'does-not-stand-for'
  | 'open-though-resistant'
  | 'susceptible-against-nature'
  | 'not-to-be-reported-susceptible'
  | 'esbl-confirmed'
  | 'esbl-screen-positive'
  | 'ampc-suspected'
  | 'carbapenemase-suspected'
  | 'multidrug'
  | ValueDoubt
export type CultureFinding = Finding<CultureCode> & {
  /** How the rule behind it is known. */ readonly provenance: readonly Provenance[]
}

/** A finding in one line. */
export function say(
  level: Level,
  code: CultureCode,
  about: Readonly<Record<string, string>>,
  ...provenance: readonly Provenance[]
): CultureFinding {
  const sources = [...new Set(provenance.flatMap((fact) => fact.sources))]
  return { code, level, about, sources, provenance }
}
