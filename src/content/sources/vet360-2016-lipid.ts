import type { Source } from '#core/evidence/sourced.ts'

export const vet3602016Lipid = {
  id: 'vet360-2016-lipid',
  citation: 'Vet360, December 2016, page 25: lipid rescue',
  seenAt: 'magazine page',
  strength: 'web',
} as const satisfies Source
