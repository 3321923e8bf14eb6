import type { Sourced } from '#core/evidence/sourced.ts'

/** Why a rate of ours is not set beside a published one: how seldom papers say what they call a complication. */
export const definitionsDiffer = {
  value: { papers: 151, mention: 92, define: 7.3, gradable: 58 },
  sources: ['follette-2020'],
  where: 'abstract: papers on soft-tissue and oncologic surgery, of 100',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-30',
} as const satisfies Sourced<{
  readonly papers: number
  readonly mention: number
  readonly define: number
  readonly gradable: number
}>
