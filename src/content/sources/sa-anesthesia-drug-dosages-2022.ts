import type { Source } from '#core/evidence/sourced.ts'

export const saAnesthesiaDrugDosages2022 = {
  id: 'sa-anesthesia-drug-dosages-2022',
  citation: 'Teaching hand-out: SA Anesthesia Drug Dosages, 2022',
  seenAt: 'scribd.com/document/642099331',
  strength: 'handout',
} as const satisfies Source
