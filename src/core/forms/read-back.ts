import { sayMoment } from '#core/time/moment.ts'
import { readTypedWeight } from '#core/units/show-weight.ts'
import { type Draft, isRecord, textIn } from './draft.ts'
import type { Field } from './field.ts'
import { readGroup } from './read-field.ts'
import type { FieldRefusal, Place } from './refusal.ts'

/**
 * How a typed date or weight was understood, when that is worth saying: the month as a word, the weight in kg and lb.
 *
 * @example readBack(weight, '27 lb', place) // '12.25 kg (27 lb)'
 */
export function readBack(field: Field, draft: Draft | undefined, place: Place): string | null {
  const text = textIn(draft).trim()
  if (text === '') return null
  if (field.control.kind === 'body-weight') {
    const read = readTypedWeight(text, { decimalMark: place.decimalMark })
    return read.kind === 'answer' ? read.answer.shown : null
  }
  const said = sayTime(
    field,
    readGroup([field], { [field.name]: draft ?? '' }, '', { place, refusals: [] })[field.name],
  )
  return said === text ? null : said
}

function sayTime({ control }: Field, value: unknown): string | null {
  if (control.kind === 'moment' && isRecord(value as Draft)) return sayMoment(value as Parameters<typeof sayMoment>[0])
  if (control.kind !== 'day' || typeof value !== 'string') return null
  return sayMoment({ at: `${value}T00:00:00.000Z`, zone: 'UTC', precision: 'day', by: 'person' })
}

/** Why what was typed so far cannot be read; null for an empty field, which nobody has left undone yet. */
export function refusalWhileTyping(field: Field, group: Draft | undefined, place: Place): FieldRefusal | null {
  const draft = isRecord(group) ? group[field.name] : undefined
  if (textIn(draft).trim() === '') return null
  const refusals: FieldRefusal[] = []
  readGroup([field], group, '', { place, refusals })
  return refusals[0] ?? null
}
