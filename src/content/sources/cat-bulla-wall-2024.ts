import type { Source } from '#core/evidence/sourced.ts'

export const catBullaWall2024 = {
  id: 'cat-bulla-wall-2024',
  citation: 'Computed tomography of the tympanic bulla in domestic shorthair and brachycephalic cats, 2024',
  seenAt: 'abstract page',
  strength: 'study',
} as const satisfies Source
