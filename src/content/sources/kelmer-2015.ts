import type { Source } from '#core/evidence/sourced.ts'

export const kelmer2015 = {
  id: 'kelmer-2015',
  citation: 'Kelmer et al., J Vet Emerg Crit Care 2015, doi 10.1111/vec.12319 (tranexamic acid in dogs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
