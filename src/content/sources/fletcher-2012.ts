import type { Source } from '#core/evidence/sourced.ts'

export const fletcher2012 = {
  id: 'fletcher-2012',
  citation:
    'Fletcher DJ, Boller M, Brainard BM, et al. RECOVER evidence and knowledge gap analysis on veterinary CPR, part 7: clinical guidelines. J Vet Emerg Crit Care 2012;22(S1):S102',
  strength: 'guideline',
} as const satisfies Source
