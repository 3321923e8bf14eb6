import type { Source } from '#core/evidence/sourced.ts'

export const fastingPracticePage = {
  id: 'fasting-practice-page',
  citation: 'Practice page on fasting before anaesthesia',
  seenAt: 'thearkclinic.com',
  strength: 'web',
} as const satisfies Source
