import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type AnyQuantity, Decimal, Quantity } from './quantity.ts'
import { isPerPound, isUnit, likelyUnit, type Unit, units } from './unit.ts'

/** Why typed text is asked for again instead of being guessed. */
export type TypedRefusalCode =
  | 'empty'
  | 'strange-character'
  | 'negative'
  | 'bound'
  | 'range'
  | 'two-numbers'
  | 'no-number'
  | 'no-unit'
  | 'unknown-unit'
  | 'per-pound'
  | 'wrong-unit'
  | 'thousands-or-decimal'
  | 'comma-without-locale'
  | 'other-decimal-mark'
  | 'missing-first-digit'
  | 'missing-last-digit'
  | 'padded-with-zeros'

export type TypedRefusal = {
  readonly because: TypedRefusalCode
  /** Places of the sentence in content/wording/quantity-refusals.ts; `given` is always there. */
  readonly about: Readonly<Record<string, string>>
}

/** How this place writes decimals. Without it a comma is asked for again. */
export type TypedOptions = { readonly decimalMark?: '.' | ','; readonly wanted?: readonly Unit[] }

/**
 * What people write for a unit when they type by hand. Only words that can mean one thing; `M`, `G`, `cup` or `oz` are
 * asked for again. Programs must use the closed list instead (see quantity-schema.ts).
 */
const spoken: Readonly<Record<string, Unit>> = {
  Kg: 'kg',
  KG: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  gram: 'g',
  grams: 'g',
  lb: '[lb_av]',
  Lb: '[lb_av]',
  LB: '[lb_av]',
  lbs: '[lb_av]',
  Lbs: '[lb_av]',
  LBS: '[lb_av]',
  pound: '[lb_av]',
  pounds: '[lb_av]',
  mcg: 'ug',
  µg: 'ug',
  μg: 'ug',
  ml: 'mL',
  cc: 'mL',
  l: 'L',
  IU: '[iU]',
  iu: '[iU]',
  'mg/ml': 'mg/mL',
  'µg/kg': 'ug/kg',
  'μg/kg': 'ug/kg',
  'mcg/kg': 'ug/kg',
  'ml/kg': 'mL/kg',
  'ml/h': 'mL/h',
}

const no = (because: TypedRefusalCode, given: string, about: Readonly<Record<string, string>> = {}) =>
  refuse({ because, about: { given, ...about } })

/**
 * Reads one quantity that a person typed, or says why it must be typed again. It never guesses: not the unit, not the
 * decimal mark, not which of two numbers was meant.
 *
 * @example readTyped('27 lb', { decimalMark: '.' }) // 27 [lb_av]; convert() makes 12.24699399 kg of it
 */
export function readTyped(text: string, options: TypedOptions = {}): Outcome<AnyQuantity, TypedRefusal> {
  // Spaces that a keyboard or a web page puts in are spaces; nothing else is normalised.
  const given = text.replaceAll(/[\u00a0\u2009\u202f\t]/g, ' ').trim()
  if (given === '') return no('empty', given)
  const odd = oddity(given)
  if (odd) return no(odd, given)

  const match = /^(?<number>[\d.,]+) ?(?<unit>\S.*)?$/.exec(given)
  const number = match?.groups?.number
  if (number === undefined) return no('no-number', given)
  const value = readNumber(number, options.decimalMark)
  if (typeof value === 'string') return no(value, given, { number })

  const word = match?.groups?.unit
  if (word === undefined) return no('no-unit', given, { number })
  return inUnit(value, word, given, options.wanted)
}

/** Finds what no single quantity may contain; undefined when the text looks like one number and a word. */
function oddity(given: string): TypedRefusalCode | undefined {
  if (/^[-−] ?[\d.,]/.test(given)) return 'negative'
  if (/[<>≤≥~≈±]|^(about|approx|ca|circa)\b/i.test(given)) return 'bound'
  if (/[\d.,] ?(?:kg|g|lbs?|mL)? ?(?:[-–—−]|to|bis|à) ?[\d.,]/i.test(given)) return 'range'
  // ASCII, the two micro signs and square brackets of units; no emoji, full-width or other digits, fractions.
  if (!/^[ -~µμ]*$/.test(given)) return 'strange-character'
  if (/\d[^\d.,/[\]]+\d/.test(given.replaceAll(/m2|H2O/g, ''))) return 'two-numbers'
  return undefined
}

function readNumber(number: string, mark: '.' | ',' | undefined): Decimal | TypedRefusalCode {
  const parts = number.split(/[.,]/)
  const [whole = '', fraction] = parts
  if (parts.length > 2) return 'thousands-or-decimal'
  if (fraction === undefined) return plainWhole(whole)
  if (whole === '') return 'missing-first-digit'
  if (fraction === '') return 'missing-last-digit'
  const written = number.charAt(whole.length)
  // A comma before exactly three digits is a thousand in half of the world and a decimal in the other half.
  if (fraction.length === 3 && (written === ',' || mark !== '.')) return 'thousands-or-decimal'
  if (written === ',' && mark === undefined) return 'comma-without-locale'
  if (mark !== undefined && written !== mark) return 'other-decimal-mark'
  const ok = plainWhole(whole)
  return typeof ok === 'string' ? ok : new Decimal(`${whole}.${fraction}`)
}

function plainWhole(whole: string): Decimal | TypedRefusalCode {
  return /^0\d/.test(whole) ? 'padded-with-zeros' : new Decimal(whole)
}

function inUnit(
  value: Decimal,
  word: string,
  given: string,
  wanted: readonly Unit[] | undefined,
): Outcome<AnyQuantity, TypedRefusal> {
  const unit = isUnit(word) ? word : Object.hasOwn(spoken, word) ? spoken[word] : undefined
  if (unit === undefined) {
    if (isPerPound(word)) return no('per-pound', given, { unit: word })
    return no('unknown-unit', given, { unit: word, suggestion: likelyUnit(word) ?? wanted?.[0] ?? 'kg' })
  }
  const fits = wanted?.some((one) => units[one].dimension === units[unit].dimension) ?? true
  if (!fits) return no('wrong-unit', given, { unit: word, wanted: (wanted ?? []).join(' or ') })
  return answer(new Quantity(value, unit) as AnyQuantity)
}
