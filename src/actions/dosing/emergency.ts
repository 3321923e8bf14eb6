import { z } from 'zod'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { quantityRefusals } from '#content/wording/quantity-refusals.ts'
import { speciesList } from '#core/animal/species.ts'
import { type EmergencySheet, emergencySheet } from '#core/dosing/emergency.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Quantity } from '#core/units/quantity.ts'
import { positiveQuantityIn } from '#core/units/quantity-schema.ts'
import { inBothUnits, readTypedWeight } from '#core/units/show-weight.ts'
import { InputError, readInput } from '../input.ts'
import { type EmergencyAnswer, writeEmergency } from './emergency-answer.ts'

const schema = z.strictObject({
  species: z.enum(speciesList, { error: 'write dog or cat' }),
  /** Typed text ("4.1 kg", "27 lb") or a quantity. */
  weight: z.unknown().refine((weight) => weight !== undefined, { message: 'write the weight, for example "4.1 kg"' }),
  decimalMark: z.enum(['.', ',']).default('.'),
  /** Nine-point scale; from 7 on the blood volume is counted on the lean weight. */
  bodyCondition: z.int().min(1).max(9).optional(),
  suspected: z.array(z.enum(['local-anaesthetic-toxicity'])).default([]),
})

/** The sheet itself, for papers that are made from it. */
export function emergencySheetOf(input: unknown): { readonly sheet: EmergencySheet; readonly shown: string } {
  const { species, weight: given, decimalMark, bodyCondition, suspected } = readInput(schema, input)
  const { weight, shown } = readWeight(given, decimalMark)
  const animal = { species, weight, suspected, ...(bodyCondition !== undefined && { bodyCondition }) }
  return { sheet: emergencySheet(animal, emergencyFacts), shown }
}

/**
 * The emergency sheet of one animal as the `emergency` contract prints it.
 *
 * @example emergency({ species: 'cat', weight: '4.1 kg' }).groups[0].rows[0].drug // 'epinephrine'
 */
export function emergency(input: unknown): EmergencyAnswer {
  const { sheet, shown } = emergencySheetOf(input)
  return writeEmergency(sheet, shown, emergencyFacts)
}

function readWeight(given: unknown, decimalMark: '.' | ','): { weight: Quantity<'kg'>; shown: string } {
  if (typeof given !== 'string') {
    const { weight } = readInput(z.object({ weight: positiveQuantityIn('kg') }), { weight: given })
    return { weight, shown: inBothUnits(weight) }
  }
  const read = readTypedWeight(given, { decimalMark })
  if (read.kind === 'refusal') {
    const { because, about } = read.refusal
    throw new InputError(because, 'weight', `weight: ${fill(quantityRefusals[because], about)}`)
  }
  const { kilograms: weight, shown } = read.answer
  if (weight.value.lte(0)) throw new InputError('not-positive', 'weight', 'weight: must be more than zero.')
  return { weight, shown }
}
