import type { Source } from '#core/evidence/sourced.ts'

export const aahaAafp2015Pain = {
  id: 'aaha-aafp-2015-pain',
  citation: '2015 AAHA/AAFP pain management guidelines for dogs and cats',
  seenAt: 'copy of the text',
  strength: 'guideline',
} as const satisfies Source
