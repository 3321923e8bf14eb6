import type { Source } from '#core/evidence/sourced.ts'

export const cfr215201286 = {
  id: 'cfr-21-520-1286',
  citation: '21 CFR 520.1286, lotilaner by mouth',
  seenAt: 'cloudfront copy of the regulations',
  strength: 'label',
} as const satisfies Source
