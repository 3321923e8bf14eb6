import type { Source } from '#core/evidence/sourced.ts'

export const vnj2026Fluids = {
  id: 'vnj-2026-fluids',
  citation: 'Veterinary Nursing Journal 41(1), February 2026, page 55, fluid boxes 1-3',
  seenAt: 'vnj.bvna.org.uk',
  strength: 'web',
} as const satisfies Source
