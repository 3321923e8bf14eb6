import type { Source } from '#core/evidence/sourced.ts'

export const iscaid2025Pyoderma = {
  id: 'iscaid-2025-pyoderma',
  citation: 'ISCAID guideline for canine pyoderma, Veterinary Dermatology 2025, doi 10.1111/vde.13342',
  seenAt: 'abstract',
  strength: 'guideline',
} as const satisfies Source
