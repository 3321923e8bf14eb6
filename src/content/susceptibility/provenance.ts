import type { Provenance } from '#core/evidence/sourced.ts'

/** How the rules of this folder are known, where many of them share it. */
export const inDataset = {
  sources: ['amr-dataset-2025'],
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

export const clsiByMemory = {
  sources: ['clsi-remembered'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-30',
} as const satisfies Provenance

/** Ours, until a clinician or the house says otherwise. */
export const ours = {
  sources: ['house-judgement'],
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Provenance
