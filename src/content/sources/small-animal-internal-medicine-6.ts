import type { Source } from '#core/evidence/sourced.ts'

export const smallAnimalInternalMedicine6 = {
  id: 'small-animal-internal-medicine-6',
  citation: 'Small Animal Internal Medicine, 6th edition, table 92.1, page 1438',
  seenAt: 'online.flipbuilder.com, page image',
  strength: 'textbook',
} as const satisfies Source
