import type { Source } from '#core/evidence/sourced.ts'

export const vin8896829 = {
  id: 'vin-8896829',
  citation: 'Surgery of the ear: neurological signs before surgery, conference notes',
  seenAt: 'vin.com 8896829',
  strength: 'web',
} as const satisfies Source
