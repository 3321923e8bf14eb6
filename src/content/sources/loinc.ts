import type { Source } from '#core/evidence/sourced.ts'

export const loinc = {
  id: 'loinc',
  citation: 'LOINC, Regenstrief Institute; free of charge under the terms at loinc.org/terms-of-use',
  seenAt: 'the FHIR vital-signs value set, which lists these codes',
  strength: 'guideline',
} as const satisfies Source
