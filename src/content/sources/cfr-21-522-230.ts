import type { Source } from '#core/evidence/sourced.ts'

export const cfr21522230 = {
  id: 'cfr-21-522-230',
  citation: '21 CFR 522.230, buprenorphine 1.8 mg/mL',
  seenAt: 'ecfr.gov',
  strength: 'label',
} as const satisfies Source
