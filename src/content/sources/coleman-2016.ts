import type { Source } from '#core/evidence/sourced.ts'

export const coleman2016 = {
  id: 'coleman-2016',
  citation:
    'Coleman KA, Smeak DD. Complication rates after bilateral versus unilateral total ear canal ablation with lateral bulla osteotomy: 79 ears. Vet Surg 2016;45(5):659–663',
  seenAt: 'abstract at discovery.researcher.life',
  strength: 'study',
} as const satisfies Source
