import type { Json } from '#core/journal/canonical.ts'
import { type Draft, isKept, isRecord, textIn } from './draft.ts'
import type { Field } from './field.ts'

/**
 * True when a field is asked, given the answers of its group. What holds something is never hidden: an answer that a
 * person gave must not leave the record because another answer changed.
 *
 * @example isRelevant(massPlace, { mass: 'no', massPlace: '' }) // false
 */
export function isRelevant(field: Field, group: Draft | undefined): boolean {
  const { shownWhen } = field
  if (!shownWhen) return true
  const record = isRecord(group) ? group : {}
  if (shownWhen.is.includes(textIn(record[shownWhen.field]))) return true
  return !isBare(record[field.name], field.otherwise)
}

/** What stands in a body for a field that is not asked; undefined when the key is left out. */
export function unasked(field: Field): Json | undefined {
  if (field.otherwise !== undefined) return field.otherwise
  if (field.nullable) return null
  const { kind } = field.control
  return kind === 'many' || kind === 'list' || kind === 'lines' || kind === 'rows' ? [] : undefined
}

/** True when nobody has answered the field; `null` is an answer ("none", "not done"). */
export function isUnanswered(draft: Draft | undefined): boolean {
  return draft === undefined || draft === ''
}

/**
 * True when nothing at all was entered in a draft, so that it can be left without losing anything. "Not assessed" that
 * somebody chose is an answer like any other.
 *
 * @example isUntouched(emptyDraft(form)) // true
 */
export function isUntouched(draft: Draft | undefined): boolean {
  return draft !== null && isBare(draft, undefined, isUntouched)
}

/** True for a draft without content; `null` and the word that stands for "not asked" are none either. */
function isBare(draft: Draft | undefined, otherwise?: string, inside: (part: Draft) => boolean = isBare): boolean {
  if (draft === undefined || draft === '' || draft === null || draft === false) return true
  if (typeof draft === 'string') return draft.trim() === '' || draft === otherwise
  if (isKept(draft)) return false
  if (Array.isArray(draft)) return draft.every((item) => inside(item))
  return typeof draft === 'object' && Object.values(draft).every((item) => inside(item))
}
