import type { Source } from '#core/evidence/sourced.ts'

export const standardEmergencyTexts = {
  id: 'standard-emergency-texts',
  citation: 'Standard small-animal emergency texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
