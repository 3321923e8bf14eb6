import type { Source } from '#core/evidence/sourced.ts'

export const cfr215201310 = {
  id: 'cfr-21-520-1310',
  citation: '21 CFR 520.1310, marbofloxacin tablets',
  seenAt: 'govregs.com',
  strength: 'label',
} as const satisfies Source
