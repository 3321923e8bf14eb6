import type { Source } from '#core/evidence/sourced.ts'

export const wsuProblemDrugs = {
  id: 'wsu-problem-drugs',
  citation: 'Washington State University, list of problem drugs for ABCB1',
  seenAt: 'vetmed.wsu.edu',
  strength: 'web',
} as const satisfies Source
