import type { Source } from '#core/evidence/sourced.ts'

export const dripRatePage = {
  id: 'drip-rate-page',
  citation: 'Veterinary formula page on intravenous drip rates',
  seenAt: 'page fluidsdrops',
  strength: 'web',
} as const satisfies Source
