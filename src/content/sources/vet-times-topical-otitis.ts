import type { Source } from '#core/evidence/sourced.ts'

export const vetTimesTopicalOtitis = {
  id: 'vet-times-topical-otitis',
  citation: 'Vet Times: summary of lectures of Bloom and of Robson on topical treatment of otitis',
  strength: 'web',
} as const satisfies Source
