import type { Source } from '#core/evidence/sourced.ts'

export const neuenschwander2010 = {
  id: 'neuenschwander-2010',
  citation:
    'Neuenschwander et al., Summarizing historical information on controls in clinical trials. Clin Trials 2010;7:5–18',
  seenAt: 'package documentation that describes the method; the paper itself is remembered',
  strength: 'study',
} as const satisfies Source
