import type { Source } from '#core/evidence/sourced.ts'

export const freyJacob2020 = {
  id: 'frey-jacob-2020',
  citation:
    'Frey E, Jacob M. Development of a method for creating antibiograms for use in companion animal private practices. J Am Vet Med Assoc 2020;257:950–960',
  seenAt: 'its abstract',
  strength: 'study',
} as const satisfies Source
