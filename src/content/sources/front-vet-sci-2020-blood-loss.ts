import type { Source } from '#core/evidence/sourced.ts'

export const frontVetSci2020BloodLoss = {
  id: 'front-vet-sci-2020-blood-loss',
  citation: 'Front Vet Sci 2020;7:212 (visual estimates of blood loss in small animals)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
