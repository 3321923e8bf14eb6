import type { Source } from '#core/evidence/sourced.ts'

export const cfr215242098 = {
  id: 'cfr-21-524-2098',
  citation: '21 CFR 524.2098, selamectin topical',
  seenAt: 'cloudfront copy of the regulations',
  strength: 'label',
} as const satisfies Source
