import type { Source } from '#core/evidence/sourced.ts'

export const neurologyTexts = {
  id: 'neurology-texts',
  citation: 'Standard veterinary neurology texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
