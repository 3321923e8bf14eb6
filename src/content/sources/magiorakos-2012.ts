import type { Source } from '#core/evidence/sourced.ts'

export const magiorakos2012 = {
  id: 'magiorakos-2012',
  citation:
    'Magiorakos and others, multidrug-resistant, extensively drug-resistant and pandrug-resistant bacteria, Clinical Microbiology and Infection 2012 (doi 10.1111/j.1469-0691.2011.03570.x)',
  seenAt: 'abstract; its lists of categories as the AMR dataset codes them',
  strength: 'guideline',
} as const satisfies Source
