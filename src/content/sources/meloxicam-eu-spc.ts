import type { Source } from '#core/evidence/sourced.ts'

export const meloxicamEuSpc = {
  id: 'meloxicam-eu-spc',
  citation: 'EU summary of product characteristics, meloxicam for cats',
  strength: 'label',
} as const satisfies Source
