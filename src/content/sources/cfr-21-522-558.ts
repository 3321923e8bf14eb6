import type { Source } from '#core/evidence/sourced.ts'

export const cfr21522558 = {
  id: 'cfr-21-522-558',
  citation: '21 CFR 522.558, dexmedetomidine',
  seenAt: 'law.lawstack.com; the same numbers in a reprint of the package insert at vetlabel.com',
  strength: 'label',
} as const satisfies Source
