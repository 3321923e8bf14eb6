import type { Source } from '#core/evidence/sourced.ts'

export const dexmedetomidineUsLabel = {
  id: 'dexmedetomidine-us-label',
  citation: 'United States label text for dexmedetomidine 0.5 mg/mL',
  seenAt: 'abbeyveterinarysupply.com, vetlabel.com, docslib.org/doc/3472182',
  strength: 'label',
} as const satisfies Source
