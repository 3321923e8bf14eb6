import type { Source } from '#core/evidence/sourced.ts'

export const zooveterinaryEarCleaning = {
  id: 'zooveterinary-ear-cleaning',
  citation: 'Page on cleaning ears (zooveterinary.com)',
  seenAt: 'web page',
  strength: 'web',
} as const satisfies Source
