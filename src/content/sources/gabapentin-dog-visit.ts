import type { Source } from '#core/evidence/sourced.ts'

export const gabapentinDogVisit = {
  id: 'gabapentin-dog-visit',
  citation: 'Pre-visit gabapentin in dogs, AVMA journals',
  seenAt: 'news copy of the abstract',
  strength: 'study',
} as const satisfies Source
