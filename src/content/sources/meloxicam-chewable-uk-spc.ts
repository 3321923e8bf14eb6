import type { Source } from '#core/evidence/sourced.ts'

export const meloxicamChewableUkSpc = {
  id: 'meloxicam-chewable-uk-spc',
  citation: 'UK summary of product characteristics, meloxicam 1 mg and 2.5 mg chewable tablets for dogs',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
