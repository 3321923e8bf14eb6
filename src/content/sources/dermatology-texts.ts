import type { Source } from '#core/evidence/sourced.ts'

export const dermatologyTexts = {
  id: 'dermatology-texts',
  citation: 'Standard dermatology and otology texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
