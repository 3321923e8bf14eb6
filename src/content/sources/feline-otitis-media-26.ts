import type { Source } from '#core/evidence/sourced.ts'

export const felineOtitisMedia26 = {
  id: 'feline-otitis-media-26',
  citation: 'Suppurative otitis media of 26 cats treated with myringotomy, lavage and a systemic antibiotic by culture',
  seenAt: 'abstract at discovery.researcher.life',
  strength: 'study',
} as const satisfies Source
