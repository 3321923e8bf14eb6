import type { Source } from '#core/evidence/sourced.ts'

export const mathews2006 = {
  id: 'mathews-2006',
  citation: 'Mathews KG et al. Subtotal ear canal ablation in 18 dogs and one cat. J Am Anim Hosp Assoc 2006;42',
  seenAt: 'abstract at petcasefinder.com',
  strength: 'study',
} as const satisfies Source
