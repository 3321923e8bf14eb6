import type { Source } from '#core/evidence/sourced.ts'

export const cfr215241146 = {
  id: 'cfr-21-524-1146',
  citation: '21 CFR 524.1146, imidacloprid and moxidectin topical',
  seenAt: 'accessdata.fda.gov',
  strength: 'label',
} as const satisfies Source
