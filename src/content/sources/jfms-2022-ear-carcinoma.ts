import type { Source } from '#core/evidence/sourced.ts'

export const jfms2022EarCarcinoma = {
  id: 'jfms-2022-ear-carcinoma',
  citation:
    'Squamous cell carcinoma of the ear canal, middle and inner ear of 25 cats, Journal of Feline Medicine and Surgery 2022, doi 10.1177/1098612X221119144',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
