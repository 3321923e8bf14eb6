import type { Source } from '#core/evidence/sourced.ts'

export const reid2007 = {
  id: 'reid-2007',
  citation:
    'Reid J et al. Development of the short-form Glasgow composite measure pain scale and derivation of an analgesic intervention score. Animal Welfare 2007;16(S):97–104',
  strength: 'study',
} as const satisfies Source
