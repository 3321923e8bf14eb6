import type { Source } from '#core/evidence/sourced.ts'

export const loinc = {
  id: 'loinc',
  citation: 'LOINC, names and numbers of laboratory tests',
  seenAt: 'numbers as held by the AMR dataset 2025',
  strength: 'web',
} as const satisfies Source
