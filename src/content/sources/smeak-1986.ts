import type { Source } from '#core/evidence/sourced.ts'

export const smeak1986 = {
  id: 'smeak-1986',
  citation:
    'Smeak DD, DeHoff WD. Total ear canal ablation: clinical results in the dog and cat. Vet Surg 1986;15:161–170',
  seenAt: 'abstract at discovery.researcher.life',
  strength: 'study',
} as const satisfies Source
