import type { Source } from '#core/evidence/sourced.ts'

export const canVetJ2021Gabapentin = {
  id: 'can-vet-j-2021-gabapentin',
  citation: 'Can Vet J 2021;62:952, review of gabapentin in cats, PMC8360309',
  seenAt: 'public copy',
  strength: 'study',
} as const satisfies Source
