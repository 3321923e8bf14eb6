import type { Source } from '#core/evidence/sourced.ts'

export const cfr215221367 = {
  id: 'cfr-21-522-1367',
  citation: '21 CFR 522.1367, meloxicam injection',
  seenAt: 'accessdata.fda.gov',
  strength: 'label',
} as const satisfies Source
