import type { Source } from '#core/evidence/sourced.ts'

export const recoverPublicSummaries = {
  id: 'recover-public-summaries',
  citation: 'Public summaries of the RECOVER guidelines for basic life support',
  seenAt: 'summary pages',
  strength: 'web',
} as const satisfies Source
