import type { Source } from '#core/evidence/sourced.ts'

export const pradofloxacinEuSpc = {
  id: 'pradofloxacin-eu-spc',
  citation: 'EU summary of product characteristics, pradofloxacin',
  strength: 'label',
} as const satisfies Source
