import type { Source } from '#core/evidence/sourced.ts'

export const cfr21522304 = {
  id: 'cfr-21-522-304',
  citation: '21 CFR 522.304, carprofen (prints mg/lb and mg/kg)',
  seenAt: 'regulation text',
  strength: 'label',
} as const satisfies Source
