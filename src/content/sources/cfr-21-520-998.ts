import type { Source } from '#core/evidence/sourced.ts'

export const cfr21520998 = {
  id: 'cfr-21-520-998',
  citation: '21 CFR 520.998, fluralaner by mouth',
  seenAt: 'checkoutapi.com copy',
  strength: 'label',
} as const satisfies Source
