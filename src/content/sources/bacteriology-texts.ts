import type { Source } from '#core/evidence/sourced.ts'

export const bacteriologyTexts = {
  id: 'bacteriology-texts',
  citation: 'Standard veterinary bacteriology texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
