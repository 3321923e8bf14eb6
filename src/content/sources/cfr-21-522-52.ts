import type { Source } from '#core/evidence/sourced.ts'

export const cfr2152252 = {
  id: 'cfr-21-522-52',
  citation: '21 CFR 522.52, alfaxalone',
  seenAt: 'ecfr.gov',
  strength: 'label',
} as const satisfies Source
