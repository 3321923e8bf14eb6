import type { Source } from '#core/evidence/sourced.ts'

export const imai2019 = {
  id: 'imai-2019',
  citation: 'Imai A et al. Vet Dermatol 2019;30:42-e12. doi:10.1111/vde.12707',
  seenAt: 'abstract at pubag.nal.usda.gov',
  strength: 'study',
} as const satisfies Source
