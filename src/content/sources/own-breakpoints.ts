import type { Source } from '#core/evidence/sourced.ts'

export const ownBreakpoints = {
  id: 'own-breakpoints',
  citation: 'This clinic’s own copy of a standard, loaded from its file and written in its journal with name and date',
  strength: 'guideline',
} as const satisfies Source
