import type { Source } from '#core/evidence/sourced.ts'

export const cfr215201315 = {
  id: 'cfr-21-520-1315',
  citation: '21 CFR 520.1315, maropitant tablets',
  seenAt: 'anthonygarvan.github.io',
  strength: 'label',
} as const satisfies Source
