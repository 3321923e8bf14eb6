import type { Source } from '#core/evidence/sourced.ts'

export const cfr215201367 = {
  id: 'cfr-21-520-1367',
  citation: '21 CFR 520.1367, meloxicam by mouth',
  seenAt: 'law.lawstack.com',
  strength: 'label',
} as const satisfies Source
