import { type AgreedPlan, fingerprintOf } from '#core/agreement/fingerprint.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import { never } from '#core/outcome/outcome.ts'
import { type Draft, isKept, isRecord, textIn } from './draft.ts'
import type { Control, Field } from './field.ts'
import {
  type LeafRead,
  readBodyWeight,
  readDay,
  readDecimal,
  readLines,
  readMoment,
  readMoney,
  readQuantityText,
  readText,
  readTimeOfDay,
  readTimes,
  readWholeNumber,
} from './read-leaf.ts'
import type { FieldRefusal, FormRefusalCode, Place } from './refusal.ts'
import { isRelevant, isUnanswered, unasked } from './relevant.ts'
import { partsOf } from './subject-parts.ts'
import { unitOf } from './unit-of.ts'

type Members = { [key: string]: Json }
type Reading = { readonly place: Place; readonly refusals: FieldRefusal[] }
type At = { readonly path: string; readonly group: Draft | undefined }

/** Reads the fields of a group; what cannot be read is left out and says why in `refusals`. */
export function readGroup(fields: readonly Field[], group: Draft | undefined, path: string, reading: Reading): Members {
  const record = isRecord(group) ? group : {}
  const body: Members = {}
  for (const field of fields) {
    if (field.control.kind === 'answered-by' || field.control.kind === 'plan-fingerprint') continue
    const at = path === '' ? field.name : `${path}.${field.name}`
    Object.assign(body, readField(field, record[field.name], { path: at, group }, reading))
  }
  const marked = fields.find(({ control }) => control.kind === 'plan-fingerprint')
  if (marked) body[marked.name] = fingerprintIn(record[marked.name], body.plan)
  return body
}

/** The mark of a plan that nobody changed stays as it is on file, even when it does not fit: consent is not renewed silently. */
function fingerprintIn(draft: Draft | undefined, plan: Json | undefined): string {
  const fingerprint = fingerprintOf(plan as unknown as AgreedPlan)
  return isKept(draft) && draft.text === fingerprint ? String(draft.stands) : fingerprint
}

function readField(field: Field, draft: Draft | undefined, at: At, reading: Reading): Members {
  if (!isRelevant(field, at.group)) {
    const value = unasked(field)
    return value === undefined ? {} : { [field.name]: value }
  }
  if (isKept(draft))
    return field.control.kind === 'body-weight' ? (draft.stands as Members) : { [field.name]: draft.stands }
  if (draft === null && field.blank !== 'required') return { [field.name]: noneOf(field) }
  if (isBlank(draft) && field.blank === 'optional' && !isGroup(field.control)) return { [field.name]: noneOf(field) }
  const read = readAnswered(field, draft, at, reading)
  if (read === undefined) return {}
  return field.control.kind === 'body-weight' ? (read as Members) : { [field.name]: read }
}

function isBlank(draft: Draft | undefined): boolean {
  return draft === null || isUnanswered(draft) || (typeof draft === 'string' && draft.trim() === '')
}

function isGroup({ kind }: Control): boolean {
  return (
    kind === 'group' ||
    kind === 'list' ||
    kind === 'rows' ||
    kind === 'details' ||
    kind === 'many' ||
    kind === 'many-from-register'
  )
}

/** What "none" or an empty optional field is in the body. */
function noneOf({ nullable, control }: Field): Json {
  if (nullable) return null
  return control.kind === 'tick' ? false : []
}

function readAnswered(field: Field, draft: Draft | undefined, at: At, reading: Reading): Json | undefined {
  const { control } = field
  switch (control.kind) {
    case 'group':
      if (field.nullable && isBlank(draft))
        return field.blank === 'optional' ? null : refused('not-chosen', field, at, reading)
      return readGroup(control.fields, draft, at.path, reading)
    case 'list':
      return readList(field, control, draft, at, reading)
    case 'rows':
      return readRows(field, control, draft, at, reading)
    case 'many':
    case 'entries':
    case 'many-from-register':
      return readMany(field, draft, leastOf(control), at, reading)
    case 'carried':
      return refused('not-drawn', field, at, reading)
    case 'details':
      return Object.fromEntries(Object.entries(isRecord(draft) ? draft : {}).filter(([, text]) => textIn(text) !== ''))
    case 'subject':
      return readSubject(field, draft, at, reading)
    case 'tick':
      return draft === true
    default:
      return settle(readOne(control, draft, at, reading.place), field, at, reading)
  }
}

type One = Exclude<
  Control,
  {
    kind:
      | 'group'
      | 'list'
      | 'rows'
      | 'many'
      | 'entries'
      | 'many-from-register'
      | 'details'
      | 'subject'
      | 'tick'
      | 'carried'
  }
>

function readOne(control: One, draft: Draft | undefined, at: At, place: Place): LeafRead {
  const text = textIn(draft)
  switch (control.kind) {
    case 'choice':
    case 'select':
    case 'suggested':
    case 'yes-no':
    case 'from-register':
    case 'entry':
      return readChosen(control, text)
    case 'text':
    case 'long-text':
      return readText(text, control.most)
    case 'lines':
      return readLines(text, control.most)
    case 'whole-number':
      return readWholeNumber(text, control.least, control.most)
    case 'decimal':
      return readDecimal(text, place)
    case 'money':
      return readMoney(text, place)
    case 'moment':
      return readMoment(text, place.zone)
    case 'day':
      return readDay(text)
    case 'time-of-day':
      return readTimeOfDay(text)
    case 'times':
      return readTimes(text)
    case 'quantity':
      return readQuantityOf(control, text, at, place)
    case 'body-weight':
      return readBodyWeight(text, place)
    case 'answered-by':
    case 'plan-fingerprint':
      throw new Error(`A ${control.kind} is not read by itself.`)
    default:
      return never(control)
  }
}

function readChosen(control: One, text: string): LeafRead {
  if (text.trim() === '') return { kind: 'refusal', refusal: { because: 'not-chosen', about: {} } }
  if (control.kind === 'yes-no') return { kind: 'answer', answer: text === 'yes' }
  return { kind: 'answer', answer: control.kind === 'choice' && control.makes === 'number' ? Number(text) : text }
}

/** The unit of a row follows from what is measured; until that is chosen the number means nothing. */
function readQuantityOf(
  control: Extract<Control, { kind: 'quantity' }>,
  text: string,
  { group }: At,
  place: Place,
): LeafRead {
  const unit = unitOf(control, group)
  if (control.unitBy && unit === undefined) return { kind: 'refusal', refusal: { because: 'unit-open', about: {} } }
  return readQuantityText(text, unit === undefined ? control.units : [unit], place)
}

function settle(read: LeafRead, field: Field, at: At, reading: Reading): Json | undefined {
  if (read.kind === 'answer') return read.answer
  return refused(read.refusal.because, field, at, reading, read.refusal.about)
}

function refused(
  because: FormRefusalCode,
  field: Pick<Field, 'at'>,
  at: Pick<At, 'path'>,
  reading: Reading,
  about: FieldRefusal['about'] = {},
): undefined {
  reading.refusals.push({ path: at.path, at: field.at, because, about })
  return undefined
}

function readList(
  field: Field,
  control: Extract<Control, { kind: 'list' }>,
  draft: Draft | undefined,
  at: At,
  reading: Reading,
): Json | undefined {
  const items: readonly Draft[] = Array.isArray(draft) ? draft : []
  if (items.length === 0 && field.blank === 'none') return refused('not-added', field, at, reading)
  if (items.length < control.least) return refused('too-few', field, at, reading, { least: String(control.least) })
  return items.map((item, index) => readGroup(control.fields, item, `${at.path}.${index}`, reading))
}

function leastOf(control: Control): number {
  return control.kind === 'many' || control.kind === 'entries' ? control.least : 0
}

function readMany(field: Field, draft: Draft | undefined, least: number, at: At, reading: Reading): Json | undefined {
  const chosen: readonly Draft[] = Array.isArray(draft) ? draft : []
  const wanted = field.blank === 'none' ? Math.max(1, least) : least
  if (chosen.length < wanted) return refused('nothing-chosen', field, at, reading)
  return chosen.map(textIn)
}

/** A list of (item, answer); untouched rows of an entry that is amended stay exactly as they were. */
function readRows(
  field: Field,
  control: Extract<Control, { kind: 'rows' }>,
  draft: Draft | undefined,
  at: At,
  reading: Reading,
): Json | undefined {
  const { rows = {}, was } = (isRecord(draft) ? draft : {}) as { rows?: Members; was?: Members }
  if (was && canonical(was.rows ?? {}) === canonical(rows)) return was.list
  const open = control.all ? control.rows.filter((row) => isUnanswered(rows[row])) : []
  for (const row of open) refused('row-unanswered', field, { path: `${at.path}.rows.${row}` }, reading, { row })
  if (open.length > 0) return undefined
  return control.rows
    .filter((row) => textIn(rows[row]) !== '')
    .map((row) => ({ [control.item]: row, [control.answer]: textIn(rows[row]) }))
}

function readSubject(field: Field, draft: Draft | undefined, at: At, reading: Reading): Json | undefined {
  const record = isRecord(draft) ? draft : {}
  const kind = textIn(record.kind)
  if (kind === '') return refused('not-chosen', field, { path: `${at.path}.kind` }, reading)
  const parts = partsOf(kind)
  for (const part of parts.filter((one) => textIn(record[one]).trim() === '')) {
    refused('not-written', field, { path: `${at.path}.${part}` }, reading)
  }
  return { kind, ...Object.fromEntries(parts.map((part) => [part, textIn(record[part]).trim()])) }
}
