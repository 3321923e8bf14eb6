import type { Source } from '#core/evidence/sourced.ts'

export const paterson2018 = {
  id: 'paterson-2018',
  citation:
    'Paterson S. Brainstem auditory evoked responses in 37 dogs with otitis media before and after topical therapy. J Small Anim Pract 2018;59:10–15. doi:10.1111/jsap.12711',
  seenAt: 'abstract page',
  strength: 'study',
} as const satisfies Source
