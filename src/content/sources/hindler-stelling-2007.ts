import type { Source } from '#core/evidence/sourced.ts'

export const hindlerStelling2007 = {
  id: 'hindler-stelling-2007',
  citation:
    'Hindler JF, Stelling J. Analysis and presentation of cumulative antibiograms: a new consensus guideline from the Clinical and Laboratory Standards Institute. Clin Infect Dis 2007;44:867–873. Not read again; remembered',
  strength: 'guideline',
} as const satisfies Source
