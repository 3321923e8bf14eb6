import type { Source } from '#core/evidence/sourced.ts'

export const wsava2017Otitis = {
  id: 'wsava-2017-otitis',
  citation:
    'World Small Animal Veterinary Association Congress 2017, proceedings: treatment of otitis with an open drum',
  seenAt: 'congress page',
  strength: 'web',
} as const satisfies Source
