import type { Source } from '#core/evidence/sourced.ts'

export const cfr215222075 = {
  id: 'cfr-21-522-2075',
  citation: '21 CFR 522.2075 and 520.2075, robenacoxib',
  seenAt: 'law.lawstack.com',
  strength: 'label',
} as const satisfies Source
