import type { Source } from '#core/evidence/sourced.ts'

export const meloxicamCkdCohort = {
  id: 'meloxicam-ckd-cohort',
  citation: 'Cohort of cats with chronic kidney disease on 0.02 mg/kg/day meloxicam',
  seenAt: 'wsava2018.net',
  strength: 'study',
} as const satisfies Source
