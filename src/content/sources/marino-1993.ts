import type { Source } from '#core/evidence/sourced.ts'

export const marino1993 = {
  id: 'marino-1993',
  citation: 'Marino DJ et al. J Am Anim Hosp Assoc 1993;29 (dogs; the attribution is from memory)',
  seenAt: 'second-hand: a page on canine ear tumours at vsso.org',
  strength: 'study',
} as const satisfies Source
