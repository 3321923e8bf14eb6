import type { Unit } from '#core/units/unit.ts'
import { unitWord } from '#core/units/unit-words.ts'

/**
 * A stored quantity as a hand would type it here again.
 *
 * @example typedAgain({ value: '2.5', unit: 'mL/h' }, ',') // '2,5 mL/h'
 */
export function typedAgain(
  { value, unit }: { readonly value: string; readonly unit: Unit },
  decimalMark: '.' | ',',
): string {
  return `${value.replace('.', decimalMark)} ${unitWord(unit)}`
}
