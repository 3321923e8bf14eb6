import { z } from 'zod'
import { sides } from '#core/animal/species.ts'
import { entryIdSchema, momentSchema } from './entry.ts'

/** "Not assessed" is an answer and never means "normal". */
export const yesNo = z.enum(['yes', 'no', 'not-assessed'])
export const blink = z.enum(['normal', 'weak', 'absent', 'not-assessed'])
export const side = z.enum(sides)
export const text = z.string().min(1).max(10_000)
export const shortText = z.string().min(1).max(300)
export const id = z.string().min(1).max(80)
export const moment = momentSchema
export const entryId = entryIdSchema
/** A wall-clock time of day, `08:00`. */
export const timeOfDay = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time of day like 08:00')
/** A calendar day, `2026-03-01`. */
export const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'must be a day like 2026-03-01')
export const decimalText = z.string().regex(/^\d+(\.\d+)?$/, 'must be a plain decimal as text, like "0.5"')
export const money = z.strictObject({ amount: decimalText, currency: z.string().regex(/^[A-Z]{3}$/) })

/** What owners are asked to say back in their own words. */
export const teachBack = z.array(
  z.strictObject({
    item: z.enum(['which-ear', 'two-risks', 'eye-care', 'collar', 'when-to-phone', 'medicines']),
    answer: z.enum(['own-words', 'with-help', 'not-yet']),
  }),
)
