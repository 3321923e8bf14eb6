import type { Source } from '#core/evidence/sourced.ts'

export const barletta2016 = {
  id: 'barletta-2016',
  citation: 'Barletta et al. 2016 (isoflurane MAC in dogs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
