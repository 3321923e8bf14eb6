import type { Source } from '#core/evidence/sourced.ts'

export const radlinsky2005 = {
  id: 'radlinsky-2005',
  citation:
    'Radlinsky MG et al. J Am Vet Med Assoc 2005;227:414 (wound infusion of bupivacaine after ear canal ablation)',
  seenAt: 'abstract at avmajournals.avma.org',
  strength: 'study',
} as const satisfies Source
