import type { Source } from '#core/evidence/sourced.ts'

export const esblScreeningTable = {
  id: 'esbl-screening-table',
  citation: 'PMC3147888, table 1: screening values for extended-spectrum beta-lactamases',
  seenAt: 'the table',
  strength: 'study',
} as const satisfies Source
