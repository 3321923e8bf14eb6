import type { Source } from '#core/evidence/sourced.ts'

export const esblScreeningPage = {
  id: 'esbl-screening-page',
  citation: 'Teaching page of a laboratory course on zones that screen for extended-spectrum beta-lactamases',
  seenAt: 'medialabinc page',
  strength: 'web',
} as const satisfies Source
