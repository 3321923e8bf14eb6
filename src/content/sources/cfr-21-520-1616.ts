import type { Source } from '#core/evidence/sourced.ts'

export const cfr215201616 = {
  id: 'cfr-21-520-1616',
  citation: '21 CFR 520.1616 and 520.1618, orbifloxacin',
  seenAt: 'law.lawstack.com',
  strength: 'label',
} as const satisfies Source
