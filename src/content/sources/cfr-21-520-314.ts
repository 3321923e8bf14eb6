import type { Source } from '#core/evidence/sourced.ts'

export const cfr21520314 = {
  id: 'cfr-21-520-314',
  citation: '21 CFR 520.314, cefadroxil',
  seenAt: 'law.lawstack.com',
  strength: 'label',
} as const satisfies Source
