import type { Source } from '#core/evidence/sourced.ts'

export const anders2008 = {
  id: 'anders-2008',
  citation:
    'Anders BB, Hoelzler MG, Scavelli TD, et al. Analysis of auditory and neurologic effects associated with ventral bulla osteotomy for removal of inflammatory polyps or nasopharyngeal masses in cats. J Am Vet Med Assoc 2008;233(4):580–585. doi:10.2460/javma.233.4.580',
  seenAt: 'copy of the PubMed abstract 18710312',
  strength: 'study',
} as const satisfies Source
