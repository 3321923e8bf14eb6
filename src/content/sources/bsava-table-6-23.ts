import type { Source } from '#core/evidence/sourced.ts'

export const bsavaTable623 = {
  id: 'bsava-table-6-23',
  citation: 'BSAVA Library, 9781910443330, chapter 6, table 6.23',
  seenAt: 'bsavalibrary.com',
  strength: 'textbook',
} as const satisfies Source
