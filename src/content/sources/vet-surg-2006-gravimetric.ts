import type { Source } from '#core/evidence/sourced.ts'

export const vetSurg2006Gravimetric = {
  id: 'vet-surg-2006-gravimetric',
  citation: 'Vet Surg 2006;35:388 (weighing swabs to measure surgical blood loss in dogs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
