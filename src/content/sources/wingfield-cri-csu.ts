import type { Source } from '#core/evidence/sourced.ts'

export const wingfieldCriCsu = {
  id: 'wingfield-cri-csu',
  citation: 'Wingfield WE. Continuous rate infusions, Colorado State University teaching page',
  seenAt: 'cvmbs.colostate.edu',
  strength: 'handout',
} as const satisfies Source
