import type { Source } from '#core/evidence/sourced.ts'

export const shaffran2013 = {
  id: 'shaffran-2013',
  citation: 'Shaffran N. Infusions for pain. WSAVA Congress Proceedings 2013',
  seenAt: 'vin.com id 5709880',
  strength: 'handout',
} as const satisfies Source
