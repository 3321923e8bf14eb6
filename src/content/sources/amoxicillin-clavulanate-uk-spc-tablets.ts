import type { Source } from '#core/evidence/sourced.ts'

export const amoxicillinClavulanateUkSpcTablets = {
  id: 'amoxicillin-clavulanate-uk-spc-tablets',
  citation: 'UK summary of product characteristics, amoxicillin/clavulanic acid 40/10 mg tablets',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
