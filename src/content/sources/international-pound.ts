import type { Source } from '#core/evidence/sourced.ts'

export const internationalPound = {
  id: 'international-pound',
  citation: 'International yard and pound agreement, 1959: 1 lb is exactly 0.45359237 kg',
  strength: 'textbook',
} as const satisfies Source
