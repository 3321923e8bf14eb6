import type { Source } from '#core/evidence/sourced.ts'

export const devitt1997 = {
  id: 'devitt-1997',
  citation:
    'Devitt CM et al. Passive drainage versus primary closure after total ear canal ablation–lateral bulla osteotomy in dogs: 59 dogs (1985–1995). Vet Surg 1997;26(3):210–216. doi:10.1111/j.1532-950x.1997.tb01486.x',
  seenAt: 'abstract at scilit.com',
  strength: 'study',
} as const satisfies Source
