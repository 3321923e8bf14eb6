import type { Register } from '#core/forms/arrangement.ts'
import type { Field } from '#core/forms/field.ts'
import type { Form } from '#core/forms/form.ts'
import type { Json } from '#core/journal/canonical.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { type Moment, sayMoment } from '#core/time/moment.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import type { Unit } from '#core/units/unit.ts'
import { unitWord } from '#core/units/unit-words.ts'
import type { Said, SaidRow } from './said.ts'

/** The words of one kind of entry in one language. */
export type BodyWords = {
  readonly label: (at: string) => string
  readonly option: (at: string, value: string) => string
  readonly yes: string
  readonly no: string
  /** What an empty answer is called there. */
  readonly blank: (at: string, means: Blankness) => string
}
export type Blankness = 'not-recorded' | 'none' | 'not-assessed'

/** Who and what the ids of a body mean, in this clinic. */
export type Names = {
  readonly registered: (register: Register, id: string, body: Body) => string
  /** The coded answers of a checkpoint as sentences. */
  readonly details: (body: Body) => readonly string[]
  readonly subject: (subject: Json) => string
  readonly decimalMark: '.' | ','
}

export type Body = { readonly [key: string]: Json }
export type Reading = { readonly words: BodyWords; readonly names: Names }

/** The answers that say "nobody looked" or "nobody asked". */
const nobodyLooked: ReadonlySet<string> = new Set([
  'not-assessed',
  'not-asked',
  'not-reported',
  'not-decided',
  'could-not-see',
])

/**
 * Every answer of a body in the order of its form, each with its label: what was not recorded is said so.
 *
 * @example sayBody(weightForm, { weight: { value: '12.4', unit: 'kg' }, … }, reading)[0] // { label: 'Weight', … }
 */
export function sayBody(form: Form, body: Json, reading: Reading): SaidRow[] {
  const whole = isBody(body) ? body : {}
  const top = form.sections.flatMap(({ fields }) => fields)
  return top.flatMap((field) => sayAt(field, field.at.split('.').slice(0, -1), whole, reading))
}

/** A section may ask for a field inside a group: `estimate.low` is looked for in `estimate`. */
function sayAt(field: Field, groups: readonly string[], whole: Body, reading: Reading): SaidRow[] {
  const inside = groups.reduce<Json | undefined>((part, step) => (isBody(part) ? part[step] : undefined), whole)
  return isBody(inside) ? sayField(field, inside, whole, reading) : []
}

function sayField(field: Field, group: Body, whole: Body, reading: Reading): SaidRow[] {
  const { control, at, name, shownWhen, otherwise, nullable } = field
  if (control.kind === 'answered-by' || control.kind === 'plan-fingerprint') return []
  const value = group[name]
  if (value === undefined && !nullable) return []
  const asked = !shownWhen || shownWhen.is.includes(String(group[shownWhen.field]))
  if (!asked && (value === null || value === undefined || value === otherwise)) return []
  return [{ at, label: reading.words.label(at), said: sayValue(field, value ?? null, { group, whole }, reading) }]
}

type Around = { readonly group: Body; readonly whole: Body }

function sayValue(field: Field, value: Json, around: Around, reading: Reading): Said {
  const { control, at } = field
  const { words, names } = reading
  if (value === null) return blank(field, words)
  if (Array.isArray(value) && value.length === 0) return blank(field, words)
  const decimal = (digits: Json | undefined) => String(digits).replace('.', names.decimalMark)
  switch (control.kind) {
    case 'choice':
    case 'select':
    case 'suggested':
      return text(words.option(at, String(value)), nobodyLooked.has(String(value)))
    case 'many':
      return text((value as string[]).map((one) => words.option(at, one)).join(', '))
    case 'yes-no':
      return text(value === true ? words.yes : words.no)
    case 'tick':
      return value === true ? { ...text(words.yes), mark: true } : text(words.no)
    case 'text':
      // A text may hold a code of an older form or of a questionnaire: it is said in words where there are some.
      return text(words.option(at, String(value)))
    case 'long-text':
      return { kind: 'words', lines: String(value).split('\n') }
    case 'lines':
      return { kind: 'words', lines: value as string[] }
    case 'decimal':
      return text(decimal(value))
    case 'money':
      return text(`${decimal((value as Body).amount)} ${(value as Body).currency}`)
    case 'moment':
      return text(sayMoment(value as unknown as Moment))
    case 'day':
      return text(sayStoredDay(String(value)))
    case 'times':
      return text((value as string[]).join(', '))
    case 'quantity': {
      const { value: digits, unit } = value as unknown as StoredQuantity<Unit>
      return text(`${decimal(digits)} ${unitWord(unit)}`)
    }
    case 'body-weight':
      return text(sayWeight(value, around.group).replaceAll('.', names.decimalMark))
    case 'from-register':
      return text(names.registered(control.register, String(value), around.whole))
    case 'many-from-register':
      return text((value as string[]).map((id) => names.registered(control.register, id, around.whole)).join(', '))
    case 'entry':
      return { kind: 'entries', ids: [String(value)] }
    case 'entries':
      return { kind: 'entries', ids: value as string[] }
    case 'details':
      return { kind: 'words', lines: names.details(around.whole) }
    case 'subject':
      return text(names.subject(value))
    case 'carried':
      return { kind: 'drawn' }
    default:
      return sayMany(field, value, around, reading)
  }
}

function sayMany({ control, at }: Field, value: Json, { whole }: Around, reading: Reading): Said {
  const { words } = reading
  const inside = (fields: readonly Field[], part: Json) =>
    fields.flatMap((one) => (isBody(part) ? sayField(one, part, whole, reading) : []))
  switch (control.kind) {
    case 'group':
      return { kind: 'rows', rows: inside(control.fields, value) }
    case 'list':
      return { kind: 'list', groups: (value as Json[]).map((part) => inside(control.fields, part)) }
    case 'rows': {
      const [asks, answers] = [`${at}.${control.item}`, `${at}.${control.answer}`]
      const rows = (value as Body[]).map((line): SaidRow => {
        const [item, answer] = [String(line[control.item]), String(line[control.answer])]
        return {
          at: `${at}.${item}`,
          label: words.option(asks, item),
          said: text(words.option(answers, answer), nobodyLooked.has(answer)),
        }
      })
      return { kind: 'rows', rows }
    }
    default:
      return text(String(value))
  }
}

function text(said: string, open = false): Extract<Said, { kind: 'text' }> {
  return { kind: 'text', text: said, open }
}

function blank({ at, blank: kind }: Field, words: BodyWords): Said {
  const means = kind === 'none' || kind === 'not-assessed' ? kind : 'not-recorded'
  return { kind: 'blank', blank: means, text: words.blank(at, means) }
}

/** A day of the journal that the calendar does not have (30 February) is said as it stands. */

/** As it was typed, with the other unit beside it. */
function sayWeight(value: Json, group: Body): string {
  const stored = (group.typed ?? value) as unknown as StoredQuantity<'kg' | '[lb_av]' | 'g'>
  return inBothUnits(fromStored(stored))
}

function isBody(value: Json | undefined): value is Body {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
