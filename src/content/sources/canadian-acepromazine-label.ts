import type { Source } from '#core/evidence/sourced.ts'

export const canadianAcepromazineLabel = {
  id: 'canadian-acepromazine-label',
  citation: 'Canadian label text, acepromazine 10 mg/mL',
  seenAt: 'petsdrugmart.ca product page',
  strength: 'label',
} as const satisfies Source
