import type { Source } from '#core/evidence/sourced.ts'

export const sylvestre1998 = {
  id: 'sylvestre-1998',
  citation: 'Sylvestre AM. Can Vet J 1998;39:157–160 (that the figure is from this paper is remembered)',
  seenAt: 'second-hand: an unnamed study quoted at vet360.vetlink.co.za',
  strength: 'study',
} as const satisfies Source
