import type { Source } from '#core/evidence/sourced.ts'

export const cfr21520812 = {
  id: 'cfr-21-520-812',
  citation: '21 CFR 520.812, enrofloxacin by mouth',
  seenAt: 'cfr.laws-info.com',
  strength: 'label',
} as const satisfies Source
