import type { Source } from '#core/evidence/sourced.ts'

export const vetTimesIvAnaesthesia = {
  id: 'vet-times-iv-anaesthesia',
  citation: 'Vet Times CPD, update on total and partial intravenous anaesthesia, table of loading and infusion doses',
  seenAt: 'vettimes.com',
  strength: 'web',
} as const satisfies Source
