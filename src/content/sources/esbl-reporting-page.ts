import type { Source } from '#core/evidence/sourced.ts'

export const esblReportingPage = {
  id: 'esbl-reporting-page',
  citation: 'Teaching page of a laboratory course on reporting extended-spectrum beta-lactamases',
  seenAt: 'labce page',
  strength: 'web',
} as const satisfies Source
