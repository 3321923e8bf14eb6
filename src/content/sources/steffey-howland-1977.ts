import type { Source } from '#core/evidence/sourced.ts'

export const steffeyHowland1977 = {
  id: 'steffey-howland-1977',
  citation: 'Steffey EP, Howland D. 1977 (isoflurane MAC in dog and cat)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
