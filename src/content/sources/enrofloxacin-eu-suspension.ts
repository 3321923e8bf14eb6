import type { Source } from '#core/evidence/sourced.ts'

export const enrofloxacinEuSuspension = {
  id: 'enrofloxacin-eu-suspension',
  citation: 'EU label text, enrofloxacin oral suspension for cats',
  seenAt: 'altavet.it',
  strength: 'label',
} as const satisfies Source
