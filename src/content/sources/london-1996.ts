import type { Source } from '#core/evidence/sourced.ts'

export const london1996 = {
  id: 'london-1996',
  citation:
    'London CA et al. Evaluation of dogs and cats with tumors of the ear canal: 145 cases. JAVMA 1996;208:1413–1418',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
