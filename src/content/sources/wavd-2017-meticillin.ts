import type { Source } from '#core/evidence/sourced.ts'

export const wavd2017Meticillin = {
  id: 'wavd-2017-meticillin',
  citation:
    'Meticillin resistance in staphylococci of animals: consensus guidelines of the World Association for Veterinary Dermatology, Veterinary Dermatology 2017, doi 10.1111/vde.12444',
  seenAt: 'abstract',
  strength: 'guideline',
} as const satisfies Source
