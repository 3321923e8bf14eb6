import type { Source } from '#core/evidence/sourced.ts'

export const greci2011 = {
  id: 'greci-2011',
  citation: 'Greci V et al. Can Vet J 2011;52:631–636',
  seenAt: 'second-hand: a citing statement at scite.ai',
  strength: 'study',
} as const satisfies Source
