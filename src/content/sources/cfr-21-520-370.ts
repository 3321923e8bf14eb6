import type { Source } from '#core/evidence/sourced.ts'

export const cfr21520370 = {
  id: 'cfr-21-520-370',
  citation: '21 CFR 520.370, cefpodoxime proxetil',
  seenAt: 'ecfr.okayd.com',
  strength: 'label',
} as const satisfies Source
