import type { Source } from '#core/evidence/sourced.ts'

export const cfr215201084 = {
  id: 'cfr-21-520-1084',
  citation: '21 CFR 520.1084, grapiprant',
  strength: 'label',
} as const satisfies Source
