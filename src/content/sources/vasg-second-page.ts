import type { Source } from '#core/evidence/sourced.ts'

export const vasgSecondPage = {
  id: 'vasg-second-page',
  citation: 'Veterinary Anesthesia and Analgesia Support Group, another page on local anaesthetics',
  seenAt: 'vasg.org',
  strength: 'web',
} as const satisfies Source
