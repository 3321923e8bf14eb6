import type { Source } from '#core/evidence/sourced.ts'

export const nuttallCole2004 = {
  id: 'nuttall-cole-2004',
  citation: 'Nuttall T, Cole LK. Ear cleaning: the UK and US perspective. Vet Dermatol 2004;15:127–136',
  strength: 'study',
} as const satisfies Source
