import type { Source } from '#core/evidence/sourced.ts'

export const earCanalHistology2009 = {
  id: 'ear-canal-histology-2009',
  citation: 'Histological changes in the external ear canal of dogs, 2009 (PubMed 20178479)',
  seenAt: 'abstract page',
  strength: 'study',
} as const satisfies Source
