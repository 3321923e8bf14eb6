import type { Source } from '#core/evidence/sourced.ts'

export const vitello2015 = {
  id: 'vitello-2015',
  citation: 'Vitello et al., J Vet Med 2015 (weight of blood in swabs)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
