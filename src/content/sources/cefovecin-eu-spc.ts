import type { Source } from '#core/evidence/sourced.ts'

export const cefovecinEuSpc = {
  id: 'cefovecin-eu-spc',
  citation: 'EU summary of product characteristics, cefovecin',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
