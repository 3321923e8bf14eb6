import type { Source } from '#core/evidence/sourced.ts'

export const hettlich2005 = {
  id: 'hettlich-2005',
  citation:
    'Hettlich BF et al. Microbiological findings of the bulla before and after flushing at TECA-LBO, 2005 (34 dogs, 47 ears)',
  seenAt: 'abstract at avmajournals.avma.org',
  strength: 'study',
} as const satisfies Source
