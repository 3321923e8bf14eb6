import type { Source } from '#core/evidence/sourced.ts'

export const mevis2023Tables = {
  id: 'mevis-2023-tables',
  citation:
    'Tables of breakpoints and wild-type limits kept with the code of Mevis and others, Staphylococcus pseudintermedius study (2023), which cite CLSI VET01S ed6 and ed7',
  seenAt: 'the tables in the repository of the study',
  strength: 'web',
} as const satisfies Source
