import type { Sourced } from '#core/evidence/sourced.ts'
import { houseJudgementOnly, lookedForNotFound } from './provenance.ts'

/** What is said before the second ear is operated. */
export const secondSideFacts = {
  twoFaces: {
    value: 'If the nerve of this side is hurt as well, neither eye closes by itself, and both have to be kept wet.',
    ...houseJudgementOnly,
    where: 'follows from one nerve for each side; no source read counts it',
    checked: '2026-11-30',
  },
  imaging: {
    value:
      'No source read says how long a scan of an ear stays true: whoever operates decides whether it is done again.',
    ...lookedForNotFound,
    checked: '2026-11-30',
  },
} as const satisfies Readonly<Record<'twoFaces' | 'imaging', Sourced<string>>>
