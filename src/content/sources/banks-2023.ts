import type { Source } from '#core/evidence/sourced.ts'

export const banks2023 = {
  id: 'banks-2023',
  citation:
    'Banks C et al. Influence of extreme brachycephalic conformation on perioperative complications associated with total ear canal ablation and lateral bulla osteotomy in 242 dogs (2010–2020). Vet Surg 2023;52(5)',
  seenAt: 'abstract on a topic page of discovery.researcher.life; citation at petcasefinder.com',
  strength: 'study',
} as const satisfies Source
