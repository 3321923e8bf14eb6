import type { Source } from '#core/evidence/sourced.ts'

export const cook2010 = {
  id: 'cook-2010',
  citation:
    'Cook JL, Evans R, Conzemius MG et al. Proposed definitions and criteria for reporting time frame, outcome, and complications for clinical orthopedic studies in veterinary medicine. Vet Surg 2010;39(8):905–908',
  seenAt: 'named and used in an abstract that was read; its own definitions are remembered',
  strength: 'guideline',
} as const satisfies Source
