import type { Source } from '#core/evidence/sourced.ts'

export const bajwa2013 = {
  id: 'bajwa-2013',
  citation:
    'Bajwa J, Charach M, Duclos D. Adverse effects of rifampicin in dogs and serum alanine aminotransferase monitoring recommendations, 2013 (344 dogs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
