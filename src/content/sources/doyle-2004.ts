import type { Source } from '#core/evidence/sourced.ts'

export const doyle2004 = {
  id: 'doyle-2004',
  citation:
    'Doyle RS, Skelly C, Bellenger CR. Surgical management of 43 cases of chronic otitis externa in the dog. Ir Vet J 2004;57(1):22–30. doi:10.1186/2046-0481-57-1-22',
  seenAt: 'abstract and methods at irishvetjournal.biomedcentral.com; page 3 of a copy',
  strength: 'study',
} as const satisfies Source
