import type { Source } from '#core/evidence/sourced.ts'

export const anaesthesiaTexts = {
  id: 'anaesthesia-texts',
  citation: 'Standard small-animal anaesthesia texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
