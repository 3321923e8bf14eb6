import type { Source } from '#core/evidence/sourced.ts'

export const topicalEarFlorfenicolPage = {
  id: 'topical-ear-florfenicol-page',
  citation: 'Note on topical florfenicol for ears in a journal for practitioners',
  seenAt: 'cliniciansbrief page',
  strength: 'web',
} as const satisfies Source
