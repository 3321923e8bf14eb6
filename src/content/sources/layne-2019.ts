import type { Source } from '#core/evidence/sourced.ts'

export const layne2019 = {
  id: 'layne-2019',
  citation: 'Layne EA, de Miguel Garcia C. Vet Dermatol 2019;30:470 (analgesia for ear procedures)',
  seenAt: 'summary at cliniciansbrief.com',
  strength: 'study',
} as const satisfies Source
