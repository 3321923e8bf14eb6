import type { Source } from '#core/evidence/sourced.ts'

export const eucastRemembered = {
  id: 'eucast-remembered',
  citation: 'EUCAST breakpoint tables and expert rules, as remembered; none was at hand',
  strength: 'guideline',
} as const satisfies Source
