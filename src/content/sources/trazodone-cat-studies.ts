import type { Source } from '#core/evidence/sourced.ts'

export const trazodoneCatStudies = {
  id: 'trazodone-cat-studies',
  citation: 'Two studies of trazodone in cats (5 mg/kg before blood donation; 50 to 100 mg per cat, PMC11185234)',
  seenAt: 'abstracts',
  strength: 'study',
} as const satisfies Source
