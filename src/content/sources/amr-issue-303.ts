import type { Source } from '#core/evidence/sourced.ts'

export const amrIssue303 = {
  id: 'amr-issue-303',
  citation: 'Public discussion 303 of the AMR package, July 2026: where the veterinary EUCAST tables stand',
  strength: 'web',
} as const satisfies Source
