import type { Source } from '#core/evidence/sourced.ts'

export const smallAnimalDermatology3 = {
  id: 'small-animal-dermatology-3',
  citation: 'Small Animal Dermatology, 3rd edition, table 13.1',
  seenAt: 'issuhub.com, page image',
  strength: 'textbook',
} as const satisfies Source
