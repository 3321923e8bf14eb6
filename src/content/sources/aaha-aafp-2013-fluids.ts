import type { Source } from '#core/evidence/sourced.ts'

export const aahaAafp2013Fluids = {
  id: 'aaha-aafp-2013-fluids',
  citation: '2013 AAHA/AAFP fluid therapy guidelines for dogs and cats',
  seenAt: 'aaha.org, anaesthetic-rate table and key points',
  strength: 'guideline',
} as const satisfies Source
