import { canonical } from '#core/journal/canonical.ts'
import { type Draft, draftAt, withDraftAt } from './draft.ts'

/** The answers that were drafted for a person: of what, what was put in, and whether somebody said that they read it. */
export type Drafted = {
  readonly of: string
  readonly fields: Readonly<Record<string, { readonly was: Draft; readonly read: boolean }>>
}

/** What can be drafted now, by field; `''` where nothing can. */
export type DraftNow = Readonly<Record<string, Draft>>

/** A form and what was drafted in it. */
export type WithDrafted = { readonly body: Draft; readonly drafted: Drafted | null }

/**
 * The form with what can be drafted now. What somebody typed or read is left as it stands; what nobody touched yet is
 * drafted again, so that it says what the entries say on opening.
 *
 * @example draftInto({ body: { side: '' }, drafted: null }, { side: 'LEFT' }, 'operation-1').body // { side: 'LEFT' }
 */
export function draftInto({ body, drafted }: WithDrafted, now: DraftNow, of: string): WithDrafted {
  let filled = body
  const fields: Record<string, Drafted['fields'][string]> = {}
  for (const [field, text] of Object.entries(now)) {
    const current = draftAt(body, field) ?? ''
    const before = drafted?.fields[field]
    const untouched = before ? same(current, before.was) : current === ''
    if (untouched && !(before?.read && drafted?.of === of)) {
      filled = withDraftAt(filled, field, text)
      fields[field] = { was: text, read: false }
    } else fields[field] = drafted?.of === of && before ? before : { was: text, read: true }
  }
  return { body: filled, drafted: { of, fields } }
}

/** Fields that stand as they were drafted, and of which nobody said that they read them. */
export function unreadFields({ body, drafted }: WithDrafted): string[] {
  return Object.entries(drafted?.fields ?? {}).flatMap(([field, { was, read }]) =>
    !read && was !== '' && same(draftAt(body, field) ?? '', was) ? [field] : [],
  )
}

/** Fields that would be drafted otherwise by now: an entry came, was corrected or was taken back since. */
export function changedSince({ body, drafted }: WithDrafted, now: DraftNow): string[] {
  return Object.entries(drafted?.fields ?? {}).flatMap(([field, { was }]) => {
    const next = now[field] ?? ''
    return same(next, was) || same(next, draftAt(body, field) ?? '') ? [] : [field]
  })
}

/** Whether the form holds what was drafted and nothing else: nobody typed in it, chose, or said that they read. */
export function isOnlyDrafted({ body, drafted }: WithDrafted, empty: Draft): boolean {
  const fields = Object.entries(drafted?.fields ?? {})
  const filled = fields.reduce((form, [field, { was }]) => withDraftAt(form, field, was), empty)
  return fields.every(([, { was, read }]) => !read || was === '') && same(body, filled)
}

/** Somebody said that they read these fields. */
export function markRead(drafted: Drafted, read: readonly string[]): Drafted {
  const fields = Object.entries(drafted.fields).map(
    ([field, one]) => [field, read.includes(field) ? { ...one, read: true } : one] as const,
  )
  return { ...drafted, fields: Object.fromEntries(fields) }
}

/** One field drafted again, because somebody asked for it; it is to be read again. */
export function draftAnew({ body, drafted }: WithDrafted, now: DraftNow, field: string): WithDrafted {
  if (!drafted) return { body, drafted }
  const text = now[field] ?? ''
  const fields = { ...drafted.fields, [field]: { was: text, read: false } }
  return { body: withDraftAt(body, field, text), drafted: { ...drafted, fields } }
}

function same(a: Draft, b: Draft): boolean {
  return canonical(a) === canonical(b)
}
