import type { Source } from '#core/evidence/sourced.ts'

export const hartrum2025 = {
  id: 'hartrum-2025',
  citation:
    'Hartrum BJ, Webb TER, Newbold GM, Gemensky-Metzler AJ, Kennedy SC, Carson BA. Ocular examinations before and after total ear canal ablation and bulla osteotomy can help recognize and prevent potential vision-threatening abnormalities in cats and dogs. J Am Vet Med Assoc 2025. doi:10.2460/javma.24.08.0533',
  seenAt: 'abstract at avmajournals.avma.org and a copy of PubMed 39793190',
  strength: 'study',
} as const satisfies Source
