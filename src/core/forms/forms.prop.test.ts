import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { forms } from '#content/forms/index.ts'
import * as answers from '#core/journal/answers.ts'
import { entryIdSchema, subjectSchema } from '#core/journal/entry.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import { parametersSchema } from '#core/plate/parameters-schema.ts'
import { draftOf } from './draft-of.ts'
import { formOf } from './form.ts'
import { readDraft } from './read-draft.ts'
import type { Place } from './refusal.ts'

const digits = fc
  .tuple(fc.nat(99_999), fc.nat(999))
  .map(([whole, part]) => (part === 0 ? `${whole}` : `${whole}.${part}`))
const number = fc.oneof(digits, fc.constantFrom('0.50', '007', '12.500', '-3', '0'))
const day = fc.date({ min: new Date(0), max: new Date(4e12), noInvalidDate: true }).map((date) => date.toISOString())
const words = fc.oneof(
  fc.string({ minLength: 1, maxLength: 40 }),
  fc.constantFrom('yes', ' spaced ', 'a\nb', 'null', '12'),
)

const moment = fc.record({
  at: day,
  zone: fc.constantFrom('Europe/London', 'Europe/Lisbon', 'America/New_York', 'UTC'),
  precision: fc.constantFrom('year', 'month', 'day', 'minute', 'second'),
  by: fc.constantFrom('clock', 'person'),
})

/** Bodies that the schema of a kind allows, tidy or not. */
function bodies(schema: z.ZodType): fc.Arbitrary<unknown> {
  if (schema === answers.moment) return moment
  if (schema === answers.day)
    return fc.oneof(
      day.map((at) => at.slice(0, 10)),
      fc.constant('2026-02-30'),
    )
  if (schema === answers.timeOfDay) return fc.constantFrom('08:00', '20:30', '00:00', '23:59')
  if (schema === answers.decimalText) return number.filter((text) => !text.startsWith('-'))
  if (schema === entryIdSchema) return fc.uuid({ version: 7 })
  if (schema === subjectSchema) return fc.constantFrom({ kind: 'clinic' }, { kind: 'ear', animal: 'a', side: 'LEFT' })
  if (schema === parametersSchema)
    return fc.constant(kindNamed('plate-drawing')?.example).map((one) => one && 'parameters' in one && one.parameters)
  if (schema instanceof z.ZodNullable) return fc.oneof(fc.constant(null), bodies(schema.unwrap() as z.ZodType))
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options)
  if (schema instanceof z.ZodBoolean) return fc.boolean()
  if (schema instanceof z.ZodNumber)
    return fc.integer({ min: schema.minValue ?? 0, max: Math.min(schema.maxValue ?? 9999, 9999) })
  if (schema instanceof z.ZodArray) return fc.array(bodies(schema.element as z.ZodType), { maxLength: 3 })
  if (schema instanceof z.ZodRecord) return fc.dictionary(fc.stringMatching(/^[a-z-]{1,8}$/), words, { maxKeys: 3 })
  if (schema instanceof z.ZodObject) return fc.record(mapped(schema.shape as Record<string, z.ZodType>))
  const shaped = ['en', 'pt-BR', 'GBP', 'case:0042', '000000000000001', '00ff'.repeat(16)]
  const fitting = shaped.filter((text) => schema.safeParse(text).success)
  const free = schema.safeParse('any words').success ? [words] : schema.safeParse('-12').success ? [number] : []
  return fc.oneof(fc.constantFrom(...fitting, ...(free.length > 0 ? ['12'] : [])), ...free)
}

function mapped(shape: Record<string, z.ZodType>): Record<string, fc.Arbitrary<unknown>> {
  return Object.fromEntries(Object.entries(shape).map(([key, member]) => [key, bodies(member)]))
}

const places: readonly Place[] = [
  { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' },
  { zone: 'Europe/Lisbon', decimalMark: ',', currency: null },
]

describe('any body that a schema allows', () => {
  it.each(forms.map((form) => [form.kind, formOf(form) as ReturnType<typeof formOf>] as const))(
    'of %s is the same after it was made a draft and read again',
    (name, form) => {
      const schema = kindNamed(name)?.body as z.ZodType
      const anyBody = bodies(schema).filter((body) => schema.safeParse(body).success)
      fc.assert(
        fc.property(anyBody, fc.constantFrom(...places), (made, place) => {
          const body = JSON.parse(JSON.stringify(schema.parse(made))) as BodyOf<KindName>
          expect(readDraft(form, draftOf(form, body, place), place)).toEqual({ kind: 'answer', answer: body })
        }),
        { numRuns: 60, seed: 2026 },
      )
    },
  )
})
