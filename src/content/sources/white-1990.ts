import type { Source } from '#core/evidence/sourced.ts'

export const white1990 = {
  id: 'white-1990',
  citation:
    'White RAS, Pomeroy CJ. Total ear canal ablation and lateral bulla osteotomy in the dog. J Small Anim Pract 1990;31(11):547–553',
  seenAt: 'abstract at discovery.researcher.life',
  strength: 'study',
} as const satisfies Source
