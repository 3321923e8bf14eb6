import type { Source } from '#core/evidence/sourced.ts'

export const commonPractice = {
  id: 'common-practice',
  citation: 'Common practice among small-animal surgeons; no publication is claimed',
  strength: 'practice',
} as const satisfies Source
