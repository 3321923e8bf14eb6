import type { Source } from '#core/evidence/sourced.ts'

export const acvimGi2018 = {
  id: 'acvim-gi-2018',
  citation: 'ACVIM consensus on gastroprotectants, 2018',
  strength: 'guideline',
} as const satisfies Source
