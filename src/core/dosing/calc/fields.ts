import { z } from 'zod'
import { Decimal } from '#core/units/quantity.ts'
import type { Field } from './operation.ts'

/** No dose, volume or weight of a dog or a cat is larger in any unit of the list; more is a slip of the keyboard. */
const largest = 1_000_000_000

/** JSON numbers are read by their decimal text, so that 0.1 is a tenth and not its binary neighbour. */
const bareNumber = z
  .number({ error: 'write a bare number; its unit stands in the name of the field' })
  .refine((value) => Math.abs(value) <= largest, { message: `must not be above ${largest}: nothing here is so large` })
  .transform((value) => new Decimal(String(value)))

const above = bareNumber.refine((value) => value.gt(0), { message: 'must be more than zero' })

/** A number above zero. Example: `positive('kg')`. */
export const positive = (unit: string): Field<Decimal> => ({ unit, optional: false, schema: above })

/** Zero or more. */
export const amount = (unit: string): Field<Decimal> => ({
  unit,
  optional: false,
  schema: bareNumber.refine((value) => value.gte(0), { message: 'must not be below zero' }),
})

/** More than 0 and at most 100. */
export const percent = (): Field<Decimal> => ({
  unit: '%',
  optional: false,
  schema: above.refine((value) => value.lte(100), { message: 'must not be above 100' }),
})

/** A whole number from 1. */
export const count = (unit: string): Field<Decimal> => ({
  unit,
  optional: false,
  schema: above.refine((value) => value.isInteger(), { message: 'must be a whole number' }),
})

/** A part of one, 0 to 1. */
export const part = (): Field<Decimal> => ({
  unit: '1',
  optional: false,
  schema: bareNumber.refine((value) => value.gte(0) && value.lte(1), { message: 'must lie between 0 and 1' }),
})

/** A field that may be left out. */
export function maybe<Value>(field: Field<Value>): Field<Value | undefined> {
  return { ...field, optional: true, schema: field.schema.optional() as z.ZodType<Value | undefined> }
}

/** A closed choice of words, mostly units. */
export function oneOf<const Word extends string>(...choices: readonly [Word, ...Word[]]): Field<Word> {
  return {
    unit: choices.join(' | '),
    choices,
    optional: false,
    schema: z.enum(choices, { error: `write one of ${choices.join(', ')}` }) as unknown as z.ZodType<Word>,
  }
}

/** The smallest piece a tablet may be given in: whole, half or quarter. */
export const tabletPiece: Field<Decimal> = {
  unit: '{tablet}',
  choices: ['1', '0.5', '0.25'],
  optional: false,
  schema: bareNumber.refine((value) => value.eq(1) || value.eq('0.5') || value.eq('0.25'), {
    message: 'write 1 for whole, 0.5 for half or 0.25 for quarter tablets',
  }),
}

/** One or more numbers above zero. */
export const several = (unit: string): Field<Decimal[]> => ({ unit, optional: false, schema: z.array(above).min(1) })

/** A word that a table of content is looked up by. */
export const word = (what: string): Field<string> => ({ unit: what, optional: false, schema: z.string().min(1) })
