import type { Provenance } from '#core/evidence/sourced.ts'

/** How the facts of this folder and of the procedures are known, when it is not one publication. */
export const commonPractice = {
  sources: ['common-practice'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const satisfies Provenance

/** Our own judgement: no source gives the figure; a clinician confirms it or the house changes it. */
export const houseJudgementOnly = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
} as const satisfies Provenance

/** Looked for among what this project holds and not found: that nobody counted it is known, not how often it happens. */
export const lookedForNotFound = {
  sources: ['house-judgement'],
  where: 'gaps: looked for and not found among the studies on file',
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const satisfies Provenance

export const standardAnatomy = {
  sources: ['standard-surgical-anatomy'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const satisfies Provenance

/** Read as a study's abstract or figures, not as the whole paper. */
export const readStudy = { known: 'read', strength: 'study', confidence: 'medium', checked: '2026-11-25' } as const
/** Read on a page that quotes somebody else. */
export const readSecondHand = { known: 'read', strength: 'textbook', confidence: 'low', checked: '2026-11-25' } as const
/** Read in congress notes. */
export const readNotes = { known: 'read', strength: 'web', confidence: 'medium', checked: '2026-11-25' } as const
