import type { Source } from '#core/evidence/sourced.ts'

export const trevor1993 = {
  id: 'trevor-1993',
  citation:
    'Trevor PB, Martin RA. Tympanic bulla osteotomy for treatment of middle-ear disease in cats: 19 cases (1984–1991). J Am Vet Med Assoc 1993;202(1):123–128. doi:10.2460/javma.1993.202.01.123',
  seenAt: 'abstract at avmajournals.avma.org',
  strength: 'study',
} as const satisfies Source
