import type { Source } from '#core/evidence/sourced.ts'

export const wainberg2019 = {
  id: 'wainberg-2019',
  citation:
    'Wainberg SH et al. Comparison of complications and outcome following unilateral, staged bilateral, and single-stage bilateral ventral bulla osteotomy in cats. J Am Vet Med Assoc 2019;255(7):828–836. doi:10.2460/javma.255.7.828',
  seenAt: 'abstract at katalog.lib.cas.cz and ouci.dntb.gov.ua',
  strength: 'study',
} as const satisfies Source
