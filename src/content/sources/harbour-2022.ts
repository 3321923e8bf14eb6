import type { Source } from '#core/evidence/sourced.ts'

export const harbour2022 = {
  id: 'harbour-2022',
  citation: 'Harbour L et al. Adverse effects of rifampicin in dogs at low doses, 2022',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
