import type { Source } from '#core/evidence/sourced.ts'

export const javmaCruciateAudit = {
  id: 'javma-cruciate-audit',
  citation: 'J Am Vet Med Assoc, audit of peri-operative antimicrobials in cruciate surgery',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
