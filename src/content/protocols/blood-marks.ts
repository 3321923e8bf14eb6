import type { Sourced } from '#core/evidence/sourced.ts'
import type { BloodMark } from '#core/theatre/blood-marks.ts'

const house = {
  sources: ['house-judgement'],
  where: 'staged marks of cumulative loss over blood volume',
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

/** Losses at which the theatre acts; each mark is a part of the blood volume. */
export const bloodMarks = [
  { value: { fraction: '0.1', code: 'inform' }, ...house },
  { value: { fraction: '0.15', code: 'replace' }, ...house },
  { value: { fraction: '0.2', code: 'transfusion-ready' }, ...house },
  { value: { fraction: '0.3', code: 'critical' }, ...house },
] as const satisfies readonly Sourced<BloodMark>[]
