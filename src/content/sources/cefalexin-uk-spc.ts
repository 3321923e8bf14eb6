import type { Source } from '#core/evidence/sourced.ts'

export const cefalexinUkSpc = {
  id: 'cefalexin-uk-spc',
  citation: 'UK summary of product characteristics, cefalexin tablets',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
