import type { Source } from '#core/evidence/sourced.ts'

export const icatcareEarAnatomy = {
  id: 'icatcare-ear-anatomy',
  citation: 'International Cat Care: structure and function of the ear in cats',
  seenAt: 'web page',
  strength: 'web',
} as const satisfies Source
