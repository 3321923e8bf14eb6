import type { Provenance } from '#core/evidence/sourced.ts'

/** Where a line lies on the canvas is our own drawing; that the structures lie so to each other stands in relations.ts. */
export const drawn = {
  sources: ['house-judgement'],
  where: 'control points of our own drawing; a surgeon compares a printed plate with a CT before release',
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
} as const satisfies Provenance
