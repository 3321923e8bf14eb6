import type { Source } from '#core/evidence/sourced.ts'

export const surgeryTexts = {
  id: 'surgery-texts',
  citation: 'Standard small-animal surgery texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
