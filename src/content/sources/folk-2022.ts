import type { Source } from '#core/evidence/sourced.ts'

export const folk2022 = {
  id: 'folk-2022',
  citation:
    'Folk CA, Lux CN, Sun X, Fryer KJ. Effect of empirical versus definitive antimicrobial selection on postoperative complications in dogs and cats undergoing total ear canal ablation with lateral bulla osteotomy: 120 cases (2009–2019). J Am Vet Med Assoc 2022;260(8):899–910. doi:10.2460/javma.21.10.0462',
  seenAt: 'copy of the PubMed abstract 35333738 and a search page of avmajournals.avma.org',
  strength: 'study',
} as const satisfies Source
