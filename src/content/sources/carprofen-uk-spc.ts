import type { Source } from '#core/evidence/sourced.ts'

export const carprofenUkSpc = {
  id: 'carprofen-uk-spc',
  citation: 'UK summary of product characteristics, carprofen injection',
  strength: 'label',
} as const satisfies Source
