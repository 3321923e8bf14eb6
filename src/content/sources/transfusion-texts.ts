import type { Source } from '#core/evidence/sourced.ts'

export const transfusionTexts = {
  id: 'transfusion-texts',
  citation: 'Standard small-animal transfusion texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
