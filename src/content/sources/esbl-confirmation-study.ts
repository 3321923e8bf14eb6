import type { Source } from '#core/evidence/sourced.ts'

export const esblConfirmationStudy = {
  id: 'esbl-confirmation-study',
  citation: 'PMC4634934, table 5: zones of cefotaxime and ceftazidime with and without clavulanate',
  seenAt: 'the table',
  strength: 'study',
} as const satisfies Source
