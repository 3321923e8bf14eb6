import type { Source } from '#core/evidence/sourced.ts'

export const usualProducts = {
  id: 'usual-products',
  citation: 'Strengths of usual products, as the trade knows them; the product in hand comes first',
  strength: 'practice',
} as const satisfies Source
