import type { Source } from '#core/evidence/sourced.ts'

export const schmidli2014 = {
  id: 'schmidli-2014',
  citation:
    'Schmidli et al., Robust meta-analytic-predictive priors in clinical trials with historical control information. Biometrics 2014;70:1023–1032',
  seenAt: 'package documentation that describes the method; the paper itself is remembered',
  strength: 'study',
} as const satisfies Source
