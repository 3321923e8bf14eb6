import { z } from 'zod'
import * as answers from '#core/journal/answers.ts'
import { type Unit, units } from '#core/units/unit.ts'
import type { FieldArrangement } from './arrangement.ts'
import type { Control, Field } from './field.ts'

type Arranged = Readonly<Record<string, FieldArrangement>>

/** Up to so many options stand as buttons beside each other; more become a list to open. */
const mostButtons = 7

/**
 * The field of one place of a body, from its schema and from what the arrangement adds to it.
 *
 * @example fieldOf('canalFeel', 'canalFeel', earFindings.body.shape.canalFeel, {}).control.kind // 'choice'
 */
export function fieldOf(name: string, at: string, schema: z.ZodType, arranged: Arranged): Field {
  const arrangement = arranged[at] ?? {}
  const nullable = schema instanceof z.ZodNullable
  const inner = nullable ? (schema.unwrap() as z.ZodType) : schema
  const control = controlOf(at, inner, arrangement, arranged)
  const blank = arrangement.blank ?? (nullable || mayStayEmpty(control) ? 'optional' : 'required')
  const { shownWhen, otherwise, now = false, empties = null } = arrangement
  return { name, at, blank, nullable, now, empties, control, shownWhen, otherwise }
}

/** The fields of a group, in the arranged order. */
export function fieldsOf(at: string, schema: z.ZodObject, arranged: Arranged): Field[] {
  const shape: Record<string, z.ZodType> = schema.shape
  const names = arranged[at]?.order ?? Object.keys(shape)
  return names.map((name) => {
    const path = at === '' ? name : `${at}.${name}`
    const member = shape[name]
    if (!member) throw new Error(`The schema holds nothing at "${path}".`)
    return fieldOf(name, path, member, arranged)
  })
}

function mayStayEmpty(control: Control): boolean {
  switch (control.kind) {
    case 'many':
    case 'entries':
    case 'list':
      return control.least === 0
    case 'rows':
      return !control.all
    case 'lines':
    case 'details':
    case 'tick':
    case 'many-from-register':
      return true
    default:
      return false
  }
}

function controlOf(at: string, schema: z.ZodType, arrangement: FieldArrangement, arranged: Arranged): Control {
  const { control, register, entries, options, answeredBy } = arrangement
  if (answeredBy !== undefined) return { kind: 'answered-by', field: answeredBy }
  if (control === 'carried' || control === 'body-weight' || control === 'plan-fingerprint' || control === 'tick')
    return { kind: control }
  if (entries && schema instanceof z.ZodArray) return { kind: 'entries', kinds: entries, least: leastOf(schema) }
  if (entries) return { kind: 'entry', kinds: entries }
  if (register && schema instanceof z.ZodArray) return { kind: 'many-from-register', register }
  if (register) return { kind: 'from-register', register, free: arrangement.free === true }
  if (options) return { kind: 'suggested', options }
  const known = controlOfKnown(schema)
  if (known) return known
  if (schema instanceof z.ZodEnum) return choiceOf(schema.options.map(String), 'text', control)
  if (schema instanceof z.ZodBoolean) return { kind: 'yes-no' }
  if (schema instanceof z.ZodNumber) return numberOf(schema, control)
  if (schema instanceof z.ZodString) return textOf(schema, control)
  if (schema instanceof z.ZodRecord) return { kind: 'details' }
  if (schema instanceof z.ZodDiscriminatedUnion) return { kind: 'subject' }
  if (schema instanceof z.ZodArray) return listOf(at, schema, arrangement, arranged)
  if (schema instanceof z.ZodObject) return groupOf(at, schema, arrangement, arranged)
  throw new Error(`No control answers "${at}".`)
}

/** The schemas of core/journal/answers.ts that mean one thing wherever they stand. */
function controlOfKnown(schema: z.ZodType): Control | undefined {
  if (schema === answers.moment) return { kind: 'moment' }
  if (schema === answers.day) return { kind: 'day' }
  if (schema === answers.timeOfDay) return { kind: 'time-of-day' }
  if (schema === answers.decimalText) return { kind: 'decimal' }
  if (schema === answers.money) return { kind: 'money' }
  return undefined
}

function choiceOf(options: readonly string[], makes: 'text' | 'number', wanted: FieldArrangement['control']): Control {
  const kind = wanted === 'select' || wanted === 'choice' ? wanted : options.length <= mostButtons ? 'choice' : 'select'
  return { kind, options, makes }
}

function numberOf(schema: z.ZodNumber, wanted: FieldArrangement['control']): Control {
  const least = schema.minValue ?? 0
  const most = schema.maxValue ?? Number.MAX_SAFE_INTEGER
  if (wanted !== 'choice' && most - least > 3) return { kind: 'whole-number', least, most }
  const options = Array.from({ length: most - least + 1 }, (_, index) => String(least + index))
  return choiceOf(options, 'number', 'choice')
}

function textOf(schema: z.ZodString, wanted: FieldArrangement['control']): Control {
  const most = schema.maxLength ?? 300
  return { kind: wanted === 'long-text' || most > 300 ? 'long-text' : 'text', most }
}

function groupOf(at: string, schema: z.ZodObject, arrangement: FieldArrangement, arranged: Arranged): Control {
  const { value, unit } = schema.shape as Record<string, z.ZodType>
  if (value && unit instanceof z.ZodEnum && Object.keys(schema.shape).length === 2) {
    const wanted = unit.options.map(String).filter((one): one is Unit => Object.hasOwn(units, one))
    return { kind: 'quantity', units: wanted, unitBy: arrangement.unitBy }
  }
  return { kind: 'group', fields: fieldsOf(at, schema, arranged) }
}

function listOf(at: string, schema: z.ZodArray, arrangement: FieldArrangement, arranged: Arranged): Control {
  const item = schema.element as z.ZodType
  const least = leastOf(schema)
  if (item === answers.timeOfDay) return { kind: 'times' }
  if (item instanceof z.ZodEnum) return { kind: 'many', options: item.options.map(String), least }
  if (item instanceof z.ZodString) return { kind: 'lines', most: item.maxLength ?? 300 }
  if (!(item instanceof z.ZodObject)) throw new Error(`No control answers the list "${at}".`)
  if (arrangement.control === 'rows') return rowsOf(at, item, arrangement)
  return { kind: 'list', fields: fieldsOf(at, item, arranged), least }
}

function rowsOf(at: string, item: z.ZodObject, arrangement: FieldArrangement): Control {
  const [first, second] = Object.entries(item.shape as Record<string, z.ZodType>)
  if (!first || !second || !(first[1] instanceof z.ZodEnum) || !(second[1] instanceof z.ZodEnum)) {
    throw new Error(`"${at}" is no list of coded questions and answers.`)
  }
  const rows = first[1].options.map(String)
  const answersOfRow = second[1].options.map(String)
  return {
    kind: 'rows',
    item: first[0],
    rows,
    answer: second[0],
    answers: answersOfRow,
    all: arrangement.rows !== 'some',
  }
}

function leastOf(schema: z.ZodArray): number {
  const checks = schema.def.checks ?? []
  return checks.map(({ _zod }) => _zod.def as { minimum?: number }).find((check) => 'minimum' in check)?.minimum ?? 0
}
