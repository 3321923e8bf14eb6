import type { Source } from '#core/evidence/sourced.ts'

export const house2015Wsava = {
  id: 'house-2015-wsava',
  citation: 'House A. Ear surgery: choosing the operation. WSAVA congress 2015',
  seenAt: 'proceedings notes',
  strength: 'web',
} as const satisfies Source
