import type { Source } from '#core/evidence/sourced.ts'

export const williams1992 = {
  id: 'williams-1992',
  citation:
    'Williams JM, White RAS. Total ear canal ablation combined with lateral bulla osteotomy in the cat. J Small Anim Pract 1992;33',
  seenAt: 'abstract at scilit.com',
  strength: 'study',
} as const satisfies Source
