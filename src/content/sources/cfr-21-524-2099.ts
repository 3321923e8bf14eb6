import type { Source } from '#core/evidence/sourced.ts'

export const cfr215242099 = {
  id: 'cfr-21-524-2099',
  citation: '21 CFR 524.2099, sarolaner and selamectin topical',
  seenAt: 'accessdata.fda.gov',
  strength: 'label',
} as const satisfies Source
