import type { Source } from '#core/evidence/sourced.ts'

export const cfr215221315 = {
  id: 'cfr-21-522-1315',
  citation: '21 CFR 522.1315, maropitant injection',
  seenAt: 'old.govregs.com and lexbuild.dev',
  strength: 'label',
} as const satisfies Source
