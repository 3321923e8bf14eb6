import type { Source } from '#core/evidence/sourced.ts'

export const mavacoxibEuSpc = {
  id: 'mavacoxib-eu-spc',
  citation: 'EU summary of product characteristics, mavacoxib chewable tablets for dogs',
  strength: 'label',
} as const satisfies Source
