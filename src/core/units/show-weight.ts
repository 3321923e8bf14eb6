import { answer, type Outcome } from '#core/outcome/outcome.ts'
import { convert, Decimal, plain, Quantity } from './quantity.ts'
import { readTyped, type TypedOptions, type TypedRefusal } from './read-typed.ts'

/** A weight as it was typed, the same exactly in kilograms, and both as one text. */
export type TypedWeight = {
  readonly kilograms: Quantity<'kg'>
  readonly typed: Quantity<'kg'> | Quantity<'[lb_av]'> | Quantity<'g'>
  readonly shown: string
}

/**
 * A body weight in both units; the one that was typed stands with its own digits, the other is rounded.
 *
 * @example inBothUnits(quantity('27', '[lb_av]')) // '12.25 kg (27 lb)'
 */
export function inBothUnits(weight: { readonly value: Decimal; readonly unit: 'kg' | '[lb_av]' | 'g' }): string {
  const kilograms = inKilograms(weight)
  const pounds = convert(weight, '[lb_av]')
  if (!pounds) throw new Error(`${weight.unit} is not a weight.`)
  const kg = weight.unit === '[lb_av]' ? rounded(kilograms.value, 2) : plain(kilograms.value)
  const lb = weight.unit === '[lb_av]' ? plain(weight.value) : rounded(pounds.value, 1)
  return `${kg} kg (${lb} lb)`
}

/** Reads a typed body weight in kg, g or pounds. Example: `readTypedWeight('4.1 kg', { decimalMark: '.' })`. */
export function readTypedWeight(text: string, options: TypedOptions = {}): Outcome<TypedWeight, TypedRefusal> {
  const read = readTyped(text, { ...options, wanted: ['kg', '[lb_av]', 'g'] })
  if (read.kind === 'refusal') return read
  const typed = read.answer
  if (typed.unit !== 'kg' && typed.unit !== '[lb_av]' && typed.unit !== 'g') {
    const about = { given: text.trim(), unit: typed.unit, wanted: 'kg or lb' }
    return { kind: 'refusal', refusal: { because: 'wrong-unit', about } }
  }
  return answer({ kilograms: inKilograms(typed), typed, shown: inBothUnits(typed) })
}

function inKilograms(weight: { readonly value: Decimal; readonly unit: 'kg' | '[lb_av]' | 'g' }): Quantity<'kg'> {
  const kilograms = convert(weight, 'kg')
  if (!kilograms) throw new Error(`${weight.unit} is not a weight.`)
  return new Quantity(kilograms.value, 'kg')
}

/** At least `digits` decimals' worth of precision, more below one so that a kitten keeps three figures. */
function rounded(value: Decimal, digits: number): string {
  const places = value.lt(1) ? digits + 1 : digits
  return plain(value.toDecimalPlaces(places, Decimal.ROUND_HALF_UP))
}
