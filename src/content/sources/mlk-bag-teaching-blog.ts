import type { Source } from '#core/evidence/sourced.ts'

export const mlkBagTeachingBlog = {
  id: 'mlk-bag-teaching-blog',
  citation: 'Veterinary emergency teaching blog, morphine-lidocaine-ketamine bag at 1 mL/kg/h',
  seenAt: 'blog page',
  strength: 'web',
} as const satisfies Source
