import type { Source } from '#core/evidence/sourced.ts'

export const mynavasInfusions = {
  id: 'mynavas-infusions',
  citation: 'Article on constant rate infusions for veterinary anaesthesia nurses',
  seenAt: 'mynavas.org',
  strength: 'web',
} as const satisfies Source
