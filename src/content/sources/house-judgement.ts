import type { Source } from '#core/evidence/sourced.ts'

export const houseJudgement = {
  id: 'house-judgement',
  citation: 'Engineering judgement of this project, to be confirmed by a clinician before release',
  strength: 'practice',
} as const satisfies Source
