import type { Source } from '#core/evidence/sourced.ts'

export const smeakInpanbutr2005 = {
  id: 'smeak-inpanbutr-2005',
  citation:
    'Smeak DD, Inpanbutr N. Lateral approach to subtotal bulla osteotomy in dogs: pertinent anatomy and procedural details, 2005',
  seenAt: 'abstract and figures, docslib.org/doc/9559154, vet.osu.edu',
  strength: 'study',
} as const satisfies Source
