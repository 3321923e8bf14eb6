import type { Source } from '#core/evidence/sourced.ts'

export const lukasik2015 = {
  id: 'lukasik-2015',
  citation: 'Lukasik V. Constant rate infusions. WSAVA Congress Proceedings 2015',
  seenAt: 'vin.com id 7259293',
  strength: 'handout',
} as const satisfies Source
