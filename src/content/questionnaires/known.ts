import type { Provenance } from '#core/evidence/sourced.ts'

/**
 * How every questionnaire here is known: questions and answers are the house's own, written from what the rest of this
 * program needs to hear. No published instrument was copied or imitated, and none of them has been validated.
 */
export const ownWords = {
  sources: ['house-judgement'],
  where: 'our own words; no published instrument was copied, and these questions were not validated',
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-30',
} as const satisfies Provenance
