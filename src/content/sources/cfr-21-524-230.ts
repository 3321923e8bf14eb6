import type { Source } from '#core/evidence/sourced.ts'

export const cfr21524230 = {
  id: 'cfr-21-524-230',
  citation: '21 CFR 524.230, buprenorphine transdermal',
  seenAt: 'customsmobile.com copy',
  strength: 'label',
} as const satisfies Source
