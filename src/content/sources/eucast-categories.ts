import type { Source } from '#core/evidence/sourced.ts'

export const eucastCategories = {
  id: 'eucast-categories',
  citation: 'EUCAST, definitions of S, I and R since 2019, pages of the committee',
  seenAt: 'pages of the committee',
  strength: 'guideline',
} as const satisfies Source
