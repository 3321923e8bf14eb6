import type { Source } from '#core/evidence/sourced.ts'

export const rosati2007 = {
  id: 'rosati-2007',
  citation: 'Rosati M et al. Am J Vet Res 2007;68:483 (dopamine and dobutamine in dogs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
