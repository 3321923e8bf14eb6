import type { Source } from '#core/evidence/sourced.ts'

export const cfr21520446 = {
  id: 'cfr-21-520-446',
  citation: '21 CFR 520.446 and 520.447, clindamycin',
  strength: 'label',
} as const satisfies Source
