import type { Source } from '#core/evidence/sourced.ts'

export const allowableBloodLossPage = {
  id: 'allowable-blood-loss-page',
  citation: 'Worked page on allowable blood loss (human example)',
  seenAt: 'pharmacalculation.com',
  strength: 'web',
} as const satisfies Source
