import { type Syringe, usualSyringes } from '#core/dosing/syringe.ts'
import type { Sourced } from '#core/evidence/sourced.ts'

/** Usual syringes and their marks; a clinic may set its own. */
export const syringes: Sourced<readonly Syringe[]> = {
  value: usualSyringes,
  sources: ['usual-products'],
  where: 'standard markings of syringes; remembered. The marks of the syringe in hand come first',
  known: 'remembered',
  strength: 'practice',
  confidence: 'high',
  checked: '2026-11-29',
}
