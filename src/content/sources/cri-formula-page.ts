import type { Source } from '#core/evidence/sourced.ts'

export const criFormulaPage = {
  id: 'cri-formula-page',
  citation: 'Veterinary formula page on continuous rate infusions',
  seenAt: 'page 5a67200',
  strength: 'web',
} as const satisfies Source
