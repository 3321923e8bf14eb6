import type { Source } from '#core/evidence/sourced.ts'

export const folk2022 = {
  id: 'folk-2022',
  citation: 'Folk CA et al. J Am Vet Med Assoc 2022;260(8):899–910. doi:10.2460/javma.21.10.0462',
  seenAt: 'copy of the PubMed abstract 35333738 and a search page of avmajournals.avma.org',
  strength: 'study',
} as const satisfies Source
