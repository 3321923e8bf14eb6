import type { Source } from '#core/evidence/sourced.ts'

export const follette2020 = {
  id: 'follette-2020',
  citation:
    'Follette CM et al. Review of how complications are defined and graded in small-animal soft-tissue and oncologic surgery, 151 papers (2020)',
  seenAt: 'abstract; the full title is not at hand',
  strength: 'study',
} as const satisfies Source
