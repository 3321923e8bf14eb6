import type { Source } from '#core/evidence/sourced.ts'

export const auricularBlockCadavers = {
  id: 'auricular-block-cadavers',
  citation: 'Great auricular and auriculotemporal nerve blocks, cadaver study of foxes and dogs (PMC5979758)',
  seenAt: 'PMC5979758',
  strength: 'study',
} as const satisfies Source
