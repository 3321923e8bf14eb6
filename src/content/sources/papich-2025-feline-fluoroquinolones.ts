import type { Source } from '#core/evidence/sourced.ts'

export const papich2025FelineFluoroquinolones = {
  id: 'papich-2025-feline-fluoroquinolones',
  citation:
    'Papich, Gunnett and Martinez, proposed feline breakpoints of fluoroquinolones, Journal of Veterinary Pharmacology and Therapeutics 2025, doi 10.1111/jvp.70028',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
