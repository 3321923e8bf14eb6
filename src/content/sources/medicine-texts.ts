import type { Source } from '#core/evidence/sourced.ts'

export const medicineTexts = {
  id: 'medicine-texts',
  citation: 'Standard small-animal medicine texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
