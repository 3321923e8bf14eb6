import type { Source } from '#core/evidence/sourced.ts'

export const papichDosePoster = {
  id: 'papich-dose-poster',
  citation: 'Poster of antimicrobial doses credited to Papich',
  seenAt: 'slideshare.net, 266964839',
  strength: 'handout',
} as const satisfies Source
