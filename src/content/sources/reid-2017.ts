import type { Source } from '#core/evidence/sourced.ts'

export const reid2017 = {
  id: 'reid-2017',
  citation:
    'Reid J et al. Definitive Glasgow acute pain scale for cats: validation and intervention level. Vet Rec 2017;180:449',
  strength: 'study',
} as const satisfies Source
