import type { Source } from '#core/evidence/sourced.ts'

export const iscaidTexts = {
  id: 'iscaid-texts',
  citation: 'ISCAID guidance and standard texts on antimicrobials (no single text named)',
  strength: 'guideline',
} as const satisfies Source
