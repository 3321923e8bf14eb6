import type { Source } from '#core/evidence/sourced.ts'

export const housePolicy = {
  id: 'house-policy',
  citation: 'This clinic’s own policy, written in its journal with name, date and reason',
  strength: 'practice',
} as const satisfies Source
