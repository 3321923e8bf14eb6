import { type AgreedPlan, fingerprintOf } from '#core/agreement/fingerprint.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { BodyOf, KindName } from '#core/journal/fold.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Unit } from '#core/units/unit.ts'
import { unitWord } from '#core/units/unit-words.ts'
import type { Draft } from './draft.ts'
import type { Control, Field } from './field.ts'
import type { Form } from './form.ts'
import { readGroup } from './read-field.ts'
import type { Place } from './refusal.ts'
import { unitOf } from './unit-of.ts'

/**
 * The draft of a body that is to be amended: every answer as a person would have typed it. What a text alone cannot
 * say (a zone, seconds, digits of a machine) is kept beside it until somebody types over it.
 *
 * @example draftOf(weightForm, { weight: { value: '12.4', unit: 'kg' }, … }, place) // { weight: '12.4 kg', … }
 */
export function draftOf<Name extends KindName>(form: Form<Name>, body: BodyOf<Name>, place: Place): Draft {
  return draftOfGroup(form.fields, body as unknown as Members, place)
}

type Members = { readonly [key: string]: Json }

function draftOfGroup(fields: readonly Field[], body: Members, place: Place): Draft {
  const asked = fields.filter(({ control }) => control.kind !== 'answered-by')
  const plain = Object.fromEntries(asked.map((field) => [field.name, draftOfField(field, body, place)]))
  return Object.fromEntries(
    asked.map((field) => [field.name, keptWhereNeeded(field, plain[field.name] as Draft, { body, plain, place })]),
  )
}

function draftOfField(field: Field, body: Members, place: Place): Draft {
  const { control, nullable, blank } = field
  const value = body[field.name]
  if (value === undefined) return ''
  if (value === null && nullable) return noneDraft(field)
  if (Array.isArray(value) && value.length === 0 && blank === 'none') return null
  switch (control.kind) {
    case 'group':
      return draftOfGroup(control.fields, value as Members, place)
    case 'list':
      return (value as Json[]).map((item) => draftOfGroup(control.fields, item as Members, place))
    case 'rows':
      return draftOfRows(control, value as Members[])
    case 'many':
    case 'entries':
    case 'many-from-register':
    case 'tick':
    case 'details':
    case 'subject':
      return value
    case 'yes-no':
      return value === true ? 'yes' : 'no'
    case 'carried':
      return { text: '', stands: value }
    case 'plan-fingerprint':
      return { text: fingerprintOf(body.plan as unknown as AgreedPlan), stands: value }
    default:
      return textOf(control, value, body, place)
  }
}

/** An optional field that says nothing is empty; elsewhere "none" is an answer that somebody chose. */
function noneDraft({ blank }: Field): Draft {
  return blank === 'optional' ? '' : null
}

function textOf(control: Control, value: Json, body: Members, place: Place): string {
  const decimal = (text: Json | undefined) => String(text).replace('.', place.decimalMark)
  switch (control.kind) {
    case 'quantity': {
      const { value: digits, unit } = value as { value: string; unit: Unit }
      const beside = unitOf(control, body)
      return unit === beside ? decimal(digits) : `${decimal(digits)} ${unitWord(unit)}`
    }
    case 'body-weight': {
      const { value: digits, unit } = (body.typed ?? value) as { value: string; unit: Unit }
      return `${decimal(digits)} ${unitWord(unit)}`
    }
    case 'money':
      return moneyAsTyped(value as Members, place)
    case 'decimal':
      return decimal(value)
    case 'moment':
      return sayMoment(value as Parameters<typeof sayMoment>[0])
    case 'day':
      return sayStoredDay(String(value))
    case 'lines':
      return (value as string[]).join('\n')
    case 'times':
      return (value as string[]).join(', ')
    default:
      return String(value)
  }
}

/** The currency of the clinic stands beside the box; another one is said. Example: `'1800.00'`, `'1800.00 EUR'`. */
export function moneyAsTyped({ amount, currency }: Members, place: Place): string {
  const digits = String(amount).replace('.', place.decimalMark)
  return currency === place.currency ? digits : `${digits} ${currency}`
}

/** A day of the journal that the calendar does not have (30 February) is shown as it stands. */

function draftOfRows(control: Extract<Control, { kind: 'rows' }>, list: readonly Members[]): Draft {
  const empty = Object.fromEntries(control.rows.map((row) => [row, '']))
  const given = Object.fromEntries(list.map((line) => [String(line[control.item]), line[control.answer] ?? '']))
  const rows = { ...empty, ...given }
  return { rows, was: { rows, list: list as Json } }
}

type Around = { readonly body: Members; readonly plain: Members; readonly place: Place }

/** Keeps the value beside the text when the text alone would be read as something else. */
function keptWhereNeeded(field: Field, draft: Draft, { body, plain, place }: Around): Draft {
  if (typeof draft !== 'string' || draft === '') return draft
  const names = field.control.kind === 'body-weight' ? [field.name, 'typed'] : [field.name]
  const was = Object.fromEntries(names.map((name) => [name, body[name] ?? null]))
  const read = readGroup([field], { ...(plain as object) }, '', { place, refusals: [] })
  if (canonical(read) === canonical(was)) return draft
  return { text: draft, stands: field.control.kind === 'body-weight' ? was : (body[field.name] ?? null) }
}
