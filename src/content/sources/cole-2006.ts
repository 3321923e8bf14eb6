import type { Source } from '#core/evidence/sourced.ts'

export const cole2006 = {
  id: 'cole-2006',
  citation: 'Cole and others 2006, enrofloxacin and ciprofloxacin against bacteria of canine ears',
  seenAt: 'summary page of the study',
  strength: 'study',
} as const satisfies Source
