import type { BodyOf } from '#core/journal/fold.ts'
import type { AnyQuantity } from '#core/units/quantity.ts'
import { readTyped } from '#core/units/read-typed.ts'
import { isUnit } from '#core/units/unit.ts'

type BloodResult = Pick<BodyOf<'blood-test'>['results'][number], 'printed' | 'unit'>

/**
 * The quantity behind a printed result, only when the number stands alone and its unit is spelled as in our closed list.
 * A comparator, a word, or a unit we do not have leaves the text as printed: nothing is converted by guess.
 *
 * @example measuredOf({ printed: '44', unit: '%' }, '.') // 44 %
 * Reference: UCUM spelling of units, core/units/unit.ts.
 */
export function measuredOf({ printed, unit }: BloodResult, decimalMark: '.' | ','): AnyQuantity | null {
  if (unit === null || !isUnit(unit)) return null
  const read = readTyped(`${printed} ${unit}`, { decimalMark })
  return read.kind === 'answer' && read.answer.unit === unit ? read.answer : null
}
