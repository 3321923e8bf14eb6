import type { Source } from '#core/evidence/sourced.ts'

export const gruen2014 = {
  id: 'gruen-2014',
  citation: 'Gruen ME et al. J Am Vet Med Assoc 2014;245:296 (trazodone after surgery in dogs)',
  strength: 'study',
} as const satisfies Source
