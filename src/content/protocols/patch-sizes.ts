import type { PatchBand } from '#core/dosing/calc/operation.ts'
import type { Sourced } from '#core/evidence/sourced.ts'

const merck = {
  sources: ['merck-opioid-table'],
  where: 'fentanyl patch by weight; the printed bands meet, a weight on the border takes the smaller patch',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

/** Fentanyl patch (ug/h) by weight: under 2.5, to 10, to 20, to 30 kg, and above. */
export const patchSizes = [
  { value: { toKg: '2.5', included: false, size: '12.5' }, ...merck },
  { value: { toKg: '10', included: true, size: '25' }, ...merck },
  { value: { toKg: '20', included: true, size: '50' }, ...merck },
  { value: { toKg: '30', included: true, size: '75' }, ...merck },
  { value: { toKg: null, included: true, size: '100' }, ...merck },
] as const satisfies readonly Sourced<PatchBand>[]
