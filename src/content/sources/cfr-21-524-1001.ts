import type { Source } from '#core/evidence/sourced.ts'

export const cfr215241001 = {
  id: 'cfr-21-524-1001',
  citation: '21 CFR 524.1001, fluralaner and moxidectin topical',
  seenAt: 'casetext.com copy',
  strength: 'label',
} as const satisfies Source
