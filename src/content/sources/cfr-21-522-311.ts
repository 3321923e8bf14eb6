import type { Source } from '#core/evidence/sourced.ts'

export const cfr21522311 = {
  id: 'cfr-21-522-311',
  citation: '21 CFR 522.311, cefovecin (prints mg/lb and mg/kg)',
  seenAt: 'regulation text',
  strength: 'label',
} as const satisfies Source
