import type { Source } from '#core/evidence/sourced.ts'

export const mcanulty1995Bulla = {
  id: 'mcanulty-1995-bulla',
  citation: 'McAnulty JF et al. Vet Surg 1995;24(1):9–14 (experimental ventral bulla osteotomy)',
  seenAt: 'abstract at acnpsearch (Bologna)',
  strength: 'study',
} as const satisfies Source
