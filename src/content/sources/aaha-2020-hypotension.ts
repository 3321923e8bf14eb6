import type { Source } from '#core/evidence/sourced.ts'

export const aaha2020Hypotension = {
  id: 'aaha-2020-hypotension',
  citation: 'AAHA 2020 anesthesia and monitoring guidelines for dogs and cats, hypotension page',
  seenAt: 'aaha.org page',
  strength: 'guideline',
} as const satisfies Source
