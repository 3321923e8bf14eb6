import type { Source } from '#core/evidence/sourced.ts'

export const sharp1990 = {
  id: 'sharp-1990',
  citation:
    'Sharp NJH. Chronic otitis externa and otitis media treated by total ear canal ablation and ventral bulla osteotomy in thirteen dogs. Vet Surg 1990;19(2):162–166',
  seenAt: 'abstract and introduction at docksci.com',
  strength: 'study',
} as const satisfies Source
