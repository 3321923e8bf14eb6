import type { Source } from '#core/evidence/sourced.ts'

export const dvm360Hypotension = {
  id: 'dvm360-hypotension',
  citation: 'dvm360 proceedings on anaesthetic hypotension',
  seenAt: 'proceedings page',
  strength: 'handout',
} as const satisfies Source
