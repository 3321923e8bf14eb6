import type { Source } from '#core/evidence/sourced.ts'

export const brockman2008Wsava = {
  id: 'brockman-2008-wsava',
  citation: 'Brockman D. Surgery of the ear. WSAVA congress 2008',
  seenAt: 'proceedings notes',
  strength: 'web',
} as const satisfies Source
