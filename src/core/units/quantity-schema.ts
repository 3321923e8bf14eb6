import { z } from 'zod'
import { convert, type Quantity, readQuantity } from './quantity.ts'
import { isPerPound, type Unit } from './unit.ts'

/**
 * A quantity as programs send it, read into one of the wanted units. Compatible units are converted exactly
 * (pounds become kilograms); a bare number, an unknown unit or another dimension is an error with a sentence.
 *
 * @example quantityIn('kg').parse({ value: 27, unit: '[lb_av]' }) // 12.24699399 kg
 */
export function quantityIn<const U extends Unit>(...wanted: readonly [U, ...U[]]) {
  return z.unknown().transform((input, context): Quantity<U> => {
    const fail = (code: string, message: string): never => {
      context.addIssue({ code: 'custom', message, params: { code } })
      return z.NEVER
    }
    const [first] = wanted
    const example = `{"value": 12.5, "unit": "${first}"}`
    const read = readQuantity(input)
    if ('because' in read) {
      switch (read.because) {
        case 'bare-number':
          return fail('bare-number', `${read.given} has no unit; write ${example.replace('12.5', read.given)}.`)
        case 'unknown-unit':
          if (isPerPound(read.given)) {
            const what = `"${read.given}" is per pound; a kilogram is 1 ÷ 0.45359237 pounds. Work the number out per kilogram`
            return fail('per-pound', `${what}, and give it in ${wanted.join(' or ')}.`)
          }
          return fail(
            'unknown-unit',
            read.suggestion
              ? `"${read.given}" is not a unit of the list; write "${read.suggestion}".`
              : `"${read.given}" is not a unit of the list; write one of ${wanted.join(', ')}.`,
          )
        default:
          return fail('not-a-quantity', `${JSON.stringify(input)} is not a quantity; write ${example}.`)
      }
    }
    const same = wanted.find((unit) => unit === read.unit)
    const converted = convert(read, same ?? first) ?? wanted.map((unit) => convert(read, unit)).find(Boolean)
    if (!converted) {
      return fail('wrong-unit', `${read.toString()} cannot stand here; give it in ${wanted.join(' or ')}.`)
    }
    return converted as Quantity<U>
  })
}

/** A quantity that must be more than zero. */
export function positiveQuantityIn<const U extends Unit>(...wanted: readonly [U, ...U[]]) {
  return quantityIn(...wanted).refine((quantity) => quantity.value.gt(0), {
    message: 'must be more than zero',
    params: { code: 'not-positive' },
  })
}
