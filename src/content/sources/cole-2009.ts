import type { Source } from '#core/evidence/sourced.ts'

export const cole2009 = {
  id: 'cole-2009',
  citation: "Cole, 'Anatomy and physiology of the canine ear', Veterinary Dermatology, 2009",
  seenAt: 'abstract page',
  strength: 'study',
} as const satisfies Source
