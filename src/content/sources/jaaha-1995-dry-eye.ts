import type { Source } from '#core/evidence/sourced.ts'

export const jaaha1995DryEye = {
  id: 'jaaha-1995-dry-eye',
  citation: 'J Am Anim Hosp Assoc 1995;31:236 (dry eye on trimethoprim-sulfadiazine: 5 of 33 dogs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
