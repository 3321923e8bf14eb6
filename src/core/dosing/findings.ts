import type { Provenance } from '#core/evidence/sourced.ts'
import type { Finding, Level } from '#core/outcome/finding.ts'

/** Every check of a planned dose has one of these codes; content/wording holds its sentence. */
export const doseCodes = [
  'drug-unknown',
  'forbidden-for-species',
  'no-dose-for-species',
  'use-not-listed',
  'route-not-listed',
  'dose-unit-not-listed',
  'row-ambiguous',
  'dose-not-chosen',
  'plan-unknown',
  'plan-for-other-species',
  'excluded',
  'excluded-by-given',
  'given-time-unknown',
  'age-unknown',
  'caution',
  'dose-below-range',
  'dose-above-range',
  'dose-twice-range',
  'dose-five-times-range',
  'dose-unit-suspected',
  'dose-unit-suspected-low',
  'over-single-maximum',
  'over-daily-maximum',
  'over-daily-maximum-at-shortest',
  'repeat-too-soon',
  'home-too-often',
  'weight-unknown',
  'weight-impossible',
  'weight-unusual',
  'weight-confirmed-by-person',
  'weight-unconfirmed',
  'weight-old',
  'weight-from-later',
  'weight-estimated',
  'weight-age-unknown',
  'weight-pounds-suspected',
  'weight-decimal-slip',
  'weight-changed',
  'weight-changed-much',
  'lean-weight-used',
  'strength-not-chosen',
  'strength-not-listed',
  'strength-unit-suspected',
  'strength-does-not-fit',
  'strength-undiluted',
  'strength-of-other-formulation',
  'volume-too-small',
  'volume-large',
  'rounded-to-nothing',
  'rounding-shifts-dose',
  'tablet-not-cut',
  'tablet-does-not-fit',
  'tablet-rounding',
  'local-anaesthetic-ceiling',
  'local-anaesthetic-infusion',
  'local-anaesthetic-uncounted',
  'nsaid-with-steroid',
  'two-nsaids',
  'pair-forbidden',
  'pair-to-think-about',
  'given-drug-unknown',
  'given-drug-read-as',
  'given-active-unknown',
  'patch-not-a-size',
  'patch-not-usual',
  'age-very-young',
  'age-old',
  'rate-too-slow',
  'duration-not-chosen',
] as const
export type DoseCode = (typeof doseCodes)[number]

/** A finding that remembers how its facts are known. */
export type DoseFinding = Finding<DoseCode> & { readonly provenance: readonly Provenance[] }

export function found(
  level: Level,
  code: DoseCode,
  about: Readonly<Record<string, string>> = {},
  provenance: readonly Provenance[] = [],
): DoseFinding {
  return { code, level, about, provenance, sources: [...new Set(provenance.flatMap((fact) => fact.sources))] }
}

export function isBlock(finding: DoseFinding): boolean {
  return finding.level === 'block'
}
