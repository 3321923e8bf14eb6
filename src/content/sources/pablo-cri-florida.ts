import type { Source } from '#core/evidence/sourced.ts'

export const pabloCriFlorida = {
  id: 'pablo-cri-florida',
  citation: 'Pablo L. Hows and whys of CRI analgesia in small animals, University of Florida',
  seenAt: 'docplayer.net/21573565',
  strength: 'handout',
} as const satisfies Source
