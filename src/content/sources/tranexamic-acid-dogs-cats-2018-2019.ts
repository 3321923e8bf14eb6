import type { Source } from '#core/evidence/sourced.ts'

export const tranexamicAcidDogsCats20182019 = {
  id: 'tranexamic-acid-dogs-cats-2018-2019',
  citation: 'Retrospective study of tranexamic acid in dogs and cats, 2018-2019 (median 10 mg/kg)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
