import type { Source } from '#core/evidence/sourced.ts'

export const emaAmeg2019 = {
  id: 'ema-ameg-2019',
  citation:
    'European Medicines Agency, Categorisation of antibiotics for use in animals, EMA/CVMP/CHMP/682198/2017, December 2019',
  seenAt: 'copies of its one-page summary; the whole list was not read',
  strength: 'guideline',
} as const satisfies Source
