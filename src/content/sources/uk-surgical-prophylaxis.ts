import type { Source } from '#core/evidence/sourced.ts'

export const ukSurgicalProphylaxis = {
  id: 'uk-surgical-prophylaxis',
  citation: 'UK guidance on surgical antimicrobial prophylaxis (no single text named)',
  strength: 'guideline',
} as const satisfies Source
