import type { Source } from '#core/evidence/sourced.ts'

export const cain2013 = {
  id: 'cain-2013',
  citation: 'Cain 2013, methicillin-resistant staphylococci in companion animals',
  seenAt: 'key points',
  strength: 'study',
} as const satisfies Source
