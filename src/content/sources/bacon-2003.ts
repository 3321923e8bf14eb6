import type { Source } from '#core/evidence/sourced.ts'

export const bacon2003 = {
  id: 'bacon-2003',
  citation:
    'Bacon NJ et al. Total ear canal ablation in the cat: indications, morbidity and long-term survival. J Small Anim Pract 2003;44(10):430–434. doi:10.1111/j.1748-5827.2003.tb00101.x',
  seenAt: 'PubMed abstract 14582656',
  strength: 'study',
} as const satisfies Source
