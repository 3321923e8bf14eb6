import type { Source } from '#core/evidence/sourced.ts'

export const standardSurgicalAnatomy = {
  id: 'standard-surgical-anatomy',
  citation: 'Standard surgical anatomy and technique of the ear (no single text named)',
  strength: 'textbook',
} as const satisfies Source
