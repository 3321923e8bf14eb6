import type { Source } from '#core/evidence/sourced.ts'

export const zukureviewTearTest = {
  id: 'zukureview-tear-test',
  citation: 'Study page on the Schirmer tear test: 15 mm/min as the lower limit of normal',
  seenAt: 'zukureview; the same cut-off on two further pages',
  strength: 'web',
} as const satisfies Source
