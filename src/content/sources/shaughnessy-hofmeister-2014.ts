import type { Source } from '#core/evidence/sourced.ts'

export const shaughnessyHofmeister2014 = {
  id: 'shaughnessy-hofmeister-2014',
  citation: 'Shaughnessy MR, Hofmeister EH. 2014 (systematic review of MAC in cats)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
