import type { Source } from '#core/evidence/sourced.ts'

export const vasgLocal2004 = {
  id: 'vasg-local-2004',
  citation: 'Veterinary Anesthesia and Analgesia Support Group, Local anesthetic basics, 2004',
  seenAt: 'vasg.org/local_anesthetics.htm',
  strength: 'web',
} as const satisfies Source
