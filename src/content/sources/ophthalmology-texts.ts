import type { Source } from '#core/evidence/sourced.ts'

export const ophthalmologyTexts = {
  id: 'ophthalmology-texts',
  citation: 'Standard veterinary ophthalmology texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
