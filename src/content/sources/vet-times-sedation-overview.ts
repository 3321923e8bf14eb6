import type { Source } from '#core/evidence/sourced.ts'

export const vetTimesSedationOverview = {
  id: 'vet-times-sedation-overview',
  citation: 'Vet Times CPD, overview of sedation and anaesthesia in small animals, combination table',
  seenAt: 'vettimes.com',
  strength: 'web',
} as const satisfies Source
