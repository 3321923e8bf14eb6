import type { Provenance, Sourced } from '#core/evidence/sourced.ts'

const ukGuidance = {
  sources: ['vmd-controlled-drugs'],
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const satisfies Provenance

/** What one country's guidance asks of a controlled-drug register. An orientation: no rule of the program hangs on it. */
export const registerRules = [
  { value: 'United Kingdom: a page for each drug, strength and form, in order of time.', ...ukGuidance },
  { value: 'United Kingdom: written the same day or the next.', ...ukGuidance },
  {
    value: 'United Kingdom: nothing is struck out or altered; a correction is a signed and dated note.',
    ...ukGuidance,
  },
  { value: 'United Kingdom: each premises keeps its own.', ...ukGuidance },
  { value: 'United Kingdom: kept for at least two years after the last entry.', ...ukGuidance },
] as const satisfies readonly Sourced<string>[]
