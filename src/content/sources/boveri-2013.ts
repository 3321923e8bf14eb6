import type { Source } from '#core/evidence/sourced.ts'

export const boveri2013 = {
  id: 'boveri-2013',
  citation: 'Boveri et al. 2013 (propofol dose in overweight and normal dogs)',
  seenAt: 'summary of the paper',
  strength: 'study',
} as const satisfies Source
