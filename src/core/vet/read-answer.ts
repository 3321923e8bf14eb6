import type { Side } from '#core/animal/species.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { check } from '#core/journal/kinds/check.ts'
import { type LookField, notAssessed, nothingSeen } from './look-fields.ts'

/** What stands in the form that was sent. */
export type Typed = { readonly get: (name: string) => string | null }

export type AnswerFault =
  | 'name-missing'
  | 'name-too-long'
  | 'day-missing'
  | 'no-such-day'
  | 'day-to-come'
  | 'day-too-early'
  | 'nothing-assessed'
  | 'not-a-number'
  | 'not-normal'
  | 'text-too-long'
/** What is wrong, and at which field of the page. */
export type FaultAt = { readonly at: string; readonly fault: AnswerFault }

export type SeenEar = { readonly side: Side; readonly body: BodyOf<'check'> }
export type ReadAnswer = {
  readonly examinedBy: string
  /** The day of the look; null when nothing was seen and only a death is told. */
  readonly day: string | null
  readonly ears: readonly SeenEar[]
  readonly saysDied: boolean
  readonly text: string | null
}

export type AnswerAsked = {
  /** The ears that are asked about, each with the day of its operation. */
  readonly ears: readonly { readonly side: Side; readonly operated: string }[]
  readonly fields: readonly LookField[]
  /** The day on which it is read, on the clinic's calendar. */
  readonly today: string
}

/** The longest words that are kept; who has more to say phones. */
export const mostLetters = 4_000
const longestName = 300

/** The name of a field on the page: `LEFT.wound`. */
export function fieldName(side: Side, name: string): string {
  return `${side}.${name}`
}

/**
 * What a practice sent on the short form, read strictly, or everything that is wrong with it. An answer that was not
 * given is "not assessed" and never "normal"; a look at which nothing was assessed is no look, and is asked again.
 *
 * @example readAnswer(new URLSearchParams('by=W&day=2026-03-12&LEFT.wound=closed'), asked) // { examinedBy: 'W', … }
 */
export function readAnswer(typed: Typed, asked: AnswerAsked): ReadAnswer | { readonly faults: readonly FaultAt[] } {
  const faults: FaultAt[] = []
  const bad = (at: string, fault: AnswerFault) => void faults.push({ at, fault })
  const examinedBy = (typed.get('by') ?? '').replace(/\s+/g, ' ').trim()
  if (examinedBy === '') bad('by', 'name-missing')
  if (examinedBy.length > longestName) bad('by', 'name-too-long')
  const saysDied = typed.get('died') === 'yes'
  const ofEars: FaultAt[] = []
  const ears = asked.ears.flatMap(({ side }) => {
    const body = earOf(typed, side, asked.fields, (at, fault) => void ofEars.push({ at, fault }))
    return body ? [{ side, body }] : []
  })
  const typedDay = (typed.get('day') ?? '').trim()
  const first = asked.ears.map(({ operated }) => operated).sort()[0] ?? ''
  const dayFault = faultOfDay(typedDay, first, asked.today)
  const needed = ears.length > 0 || !saysDied
  if (dayFault && (needed || typedDay !== '')) bad('day', dayFault)
  faults.push(...ofEars)
  // What could not be read is an answer: that alone is said of it.
  const [ear] = asked.ears
  if (ears.length === 0 && !saysDied && ofEars.length === 0) bad(ear ? earPlace(ear.side) : 'by', 'nothing-assessed')
  const words = (typed.get('text') ?? '').replaceAll('\r\n', '\n').trim()
  if (words.length > mostLetters) bad('text', 'text-too-long')
  if (faults.length > 0) return { faults }
  return { examinedBy, day: ears.length > 0 ? typedDay : null, ears, saysDied, text: words === '' ? null : words }
}

/** The place of the questions about one ear. */
export function earPlace(side: Side): string {
  return `ear-${side}`
}

function faultOfDay(day: string, operated: string, today: string): AnswerFault | null {
  if (day === '') return 'day-missing'
  const at = `${day}T00:00:00.000Z`
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || Number.isNaN(Date.parse(at)) || new Date(at).toISOString() !== at)
    return 'no-such-day'
  if (day > today) return 'day-to-come'
  return day <= operated ? 'day-too-early' : null
}

/** The look at one ear; null when nothing of it was assessed. */
function earOf(
  typed: Typed,
  side: Side,
  fields: readonly LookField[],
  wrong: (at: string, fault: 'not-a-number' | 'not-normal') => void,
): BodyOf<'check'> | null {
  const seen: Record<string, unknown> = {}
  for (const field of fields) {
    const at = fieldName(side, field.name)
    const given = (typed.get(at) ?? '').trim()
    if (field.kind === 'normal') {
      if (given !== 'yes') continue
      // A touch that says "normal" beside a sign that was found: one of the two is a slip.
      const found = Object.entries(field.answers).some(([name, normal]) => {
        const other = typed.get(fieldName(side, name)) ?? ''
        return other !== '' && other !== notAssessed && other !== normal
      })
      if (found) wrong(at, 'not-normal')
      else Object.assign(seen, field.answers)
    } else if (field.kind === 'words') {
      if (given !== notAssessed && field.options.includes(given)) seen[field.name] = given
    } else if (/^\d{1,3}([.,]\d{1,2})?$/.test(given)) {
      seen[field.name] = { value: given.replace(',', '.'), unit: field.unit }
    } else if (given !== '') wrong(at, 'not-a-number')
  }
  return Object.keys(seen).length === 0 ? null : check.body.parse({ ...nothingSeen, ...seen })
}
