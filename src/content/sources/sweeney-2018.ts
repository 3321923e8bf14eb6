import type { Source } from '#core/evidence/sourced.ts'

export const sweeney2018 = {
  id: 'sweeney-2018',
  citation:
    'Sweeney and others, the definitions of multidrug resistance for veterinary bacteria, Journal of Antimicrobial Chemotherapy 2018 (doi 10.1093/jac/dky043)',
  seenAt: 'abstract',
  strength: 'guideline',
} as const satisfies Source
