import type { Source } from '#core/evidence/sourced.ts'

export const hardie2008 = {
  id: 'hardie-2008',
  citation: 'Hardie EM, Linder KE, Pease AP. Aural cholesteatoma in twenty dogs. Vet Surg 2008;37:763–770',
  seenAt: 'abstract at avmi.net',
  strength: 'study',
} as const satisfies Source
