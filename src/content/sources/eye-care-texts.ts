import type { Source } from '#core/evidence/sourced.ts'

export const eyeCareTexts = {
  id: 'eye-care-texts',
  citation: 'Eye care after facial nerve injury, standard teaching (no single text named)',
  strength: 'textbook',
} as const satisfies Source
