import { type Draft, isRecord } from './draft.ts'
import type { Field } from './field.ts'
import { isRelevant, isUnanswered } from './relevant.ts'

/** The answers that say "nobody looked" or "nobody asked". */
const notLooked = ['not-assessed', 'not-asked', 'not-reported']

/**
 * Says "not assessed" to everything that is still open and can be answered so, because a person asked for it. What was
 * answered stays, and what must be answered otherwise stays open.
 *
 * @example restNotAssessed(baselineForm.fields, draft) // { …, RIGHT: { blink: 'not-assessed', tearTest: null, … } }
 */
export function restNotAssessed(fields: readonly Field[], draft: Draft | undefined): Draft {
  const record = isRecord(draft) ? draft : {}
  const settled = fields.map((field) => [field.name, settle(field, record[field.name], draft)] as const)
  return { ...record, ...Object.fromEntries(settled.filter(([, part]) => part !== undefined)) } as Draft
}

/**
 * How many answers `restNotAssessed` would give.
 *
 * @example openLooks(weightForm.fields, emptyDraft(weightForm)) // 1, the body condition
 */
export function openLooks(fields: readonly Field[], draft: Draft | undefined): number {
  return differences(isRecord(draft) ? draft : {}, restNotAssessed(fields, draft))
}

function differences(before: Draft | undefined, after: Draft | undefined): number {
  // An unanswered field is '' or not there at all; null is an answer.
  if (!isRecord(after)) return (before === undefined ? '' : before) === (after === undefined ? '' : after) ? 0 : 1
  const record = isRecord(before) ? before : {}
  return Object.keys(after).reduce((sum, key) => sum + differences(record[key], after[key]), 0)
}

function settle(field: Field, draft: Draft | undefined, group: Draft | undefined): Draft | undefined {
  const { control } = field
  if (!isRelevant(field, group)) return draft
  if (control.kind === 'group' && !field.nullable) return restNotAssessed(control.fields, draft)
  if (control.kind === 'group' && isRecord(draft)) return restNotAssessed(control.fields, draft)
  if (control.kind === 'rows') return settleRows(control.rows, control.answers, draft)
  if (!isUnanswered(draft)) return draft
  if (field.blank === 'not-assessed') return null
  const word = control.kind === 'choice' || control.kind === 'select' ? control.options.find(isNotLooked) : undefined
  return word ?? draft
}

function settleRows(rows: readonly string[], answers: readonly string[], draft: Draft | undefined): Draft | undefined {
  const word = answers.find(isNotLooked)
  if (word === undefined) return draft
  const record = isRecord(draft) ? draft : {}
  const given = isRecord(record.rows) ? record.rows : {}
  const filled = rows.map((row) => [row, isUnanswered(given[row]) ? word : (given[row] ?? '')] as const)
  return { ...record, rows: Object.fromEntries(filled) }
}

function isNotLooked(option: string): boolean {
  return notLooked.includes(option)
}
