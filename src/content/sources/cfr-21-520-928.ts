import type { Source } from '#core/evidence/sourced.ts'

export const cfr21520928 = {
  id: 'cfr-21-520-928',
  citation: '21 CFR 520.928, firocoxib',
  strength: 'label',
} as const satisfies Source
