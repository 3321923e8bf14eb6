import type { Source } from '#core/evidence/sourced.ts'

export const jcm2018Schleiferi = {
  id: 'jcm-2018-schleiferi',
  citation: 'Methicillin resistance in Staphylococcus schleiferi, Journal of Clinical Microbiology 2018;56:e01653-17',
  seenAt: 'abstract and table',
  strength: 'study',
} as const satisfies Source
