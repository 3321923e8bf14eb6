import type { Source } from '#core/evidence/sourced.ts'

export const cfr21522224 = {
  id: 'cfr-21-522-224',
  citation: '21 CFR 522.224, bupivacaine liposome injectable suspension',
  seenAt: 'lexbuild.dev copy of title 21',
  strength: 'label',
} as const satisfies Source
