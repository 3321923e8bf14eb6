import type { Source } from '#core/evidence/sourced.ts'

export const robenacoxibUkSpc = {
  id: 'robenacoxib-uk-spc',
  citation: 'UK summary of product characteristics, robenacoxib 5, 10, 20 and 40 mg tablets for dogs',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
