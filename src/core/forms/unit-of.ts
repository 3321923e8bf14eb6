import type { Unit } from '#core/units/unit.ts'
import { type Draft, isRecord, textIn } from './draft.ts'
import type { Control } from './field.ts'

/**
 * The unit that stands beside the box, because the field takes no other: its only one, or the one that follows from
 * what is measured. Undefined where the unit must be typed, and where it is not settled yet.
 *
 * @example unitOf(valueControl, { what: 'heart-rate' }) // '/min'
 */
export function unitOf(
  { units, unitBy }: Extract<Control, { kind: 'quantity' }>,
  group: Draft | undefined,
): Unit | undefined {
  if (!unitBy) return units.length === 1 ? units[0] : undefined
  return unitBy.units[textIn(isRecord(group) ? group[unitBy.field] : undefined)]
}
