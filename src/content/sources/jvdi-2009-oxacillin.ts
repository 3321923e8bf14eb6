import type { Source } from '#core/evidence/sourced.ts'

export const jvdi2009Oxacillin = {
  id: 'jvdi-2009-oxacillin',
  citation:
    'Oxacillin and cefoxitin cut-offs against mecA in Staphylococcus pseudintermedius, Journal of Veterinary Diagnostic Investigation 2009;21:684-688',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
