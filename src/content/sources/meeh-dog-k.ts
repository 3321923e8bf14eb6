import type { Source } from '#core/evidence/sourced.ts'

export const meehDogK = {
  id: 'meeh-dog-k',
  citation: 'Body-surface guide for dogs with K 10.1; Meeh form also in PMC6219877',
  seenAt: 'guide page and PMC6219877',
  strength: 'web',
} as const satisfies Source
