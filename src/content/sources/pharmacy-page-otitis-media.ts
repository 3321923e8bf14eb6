import type { Source } from '#core/evidence/sourced.ts'

export const pharmacyPageOtitisMedia = {
  id: 'pharmacy-page-otitis-media',
  citation: 'Page of a compounding pharmacy on otitis media in dogs and cats (martinavenue)',
  strength: 'web',
} as const satisfies Source
