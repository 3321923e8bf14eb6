import type { Source } from '#core/evidence/sourced.ts'

export const vetRecordOpenAntibiotics = {
  id: 'vet-record-open-antibiotics',
  citation: 'Vet Record Open, table of appropriate antimicrobial doses',
  seenAt: 'table on the page of the paper',
  strength: 'study',
} as const satisfies Source
