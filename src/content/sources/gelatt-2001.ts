import type { Source } from '#core/evidence/sourced.ts'

export const gelatt2001 = {
  id: 'gelatt-2001',
  citation: 'Gelatt KN et al. Vet Ophthalmol 2001 (enrofloxacin and the feline retina)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
