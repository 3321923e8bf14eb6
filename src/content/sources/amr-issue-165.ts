import type { Source } from '#core/evidence/sourced.ts'

export const amrIssue165 = {
  id: 'amr-issue-165',
  citation: 'Public issue 165 of the R package AMR, on animal species and borrowed breakpoints in cumulative tables',
  strength: 'web',
} as const satisfies Source
