import type { Source } from '#core/evidence/sourced.ts'

export const cfr21522147 = {
  id: 'cfr-21-522-147',
  citation: '21 CFR 522.147, atipamezole',
  seenAt: 'casetext.com (text of 2024) and law.lawstack.com (text of 2019)',
  strength: 'label',
} as const satisfies Source
