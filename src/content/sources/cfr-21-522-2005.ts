import type { Source } from '#core/evidence/sourced.ts'

export const cfr215222005 = {
  id: 'cfr-21-522-2005',
  citation: '21 CFR 522.2005, propofol (older text)',
  seenAt: 'chanrobles.com',
  strength: 'label',
} as const satisfies Source
