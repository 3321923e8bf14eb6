import type { Source } from '#core/evidence/sourced.ts'

export const clsiRemembered = {
  id: 'clsi-remembered',
  citation: 'CLSI documents VET01S, VET09, M100 and M39, as remembered; none was at hand',
  strength: 'guideline',
} as const satisfies Source
