import type { Source } from '#core/evidence/sourced.ts'

export const papichLindeman2018 = {
  id: 'papich-lindeman-2018',
  citation:
    'Papich and Lindeman 2018, cefalexin and cefalotin breakpoints against Staphylococcus pseudintermedius, Journal of Veterinary Diagnostic Investigation (doi 10.1177/1040638717742434)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
