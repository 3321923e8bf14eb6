import { useEffect, useMemo, useRef } from 'react'
import {
  changedSince,
  draftAnew,
  draftInto,
  isOnlyDrafted,
  markRead,
  unreadFields,
  type WithDrafted,
} from '#core/forms/drafted.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import type { Place } from '#core/forms/refusal.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { KindName } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { formFor } from '../../../forms/forms.ts'
import { useCaseView } from '../case-view.ts'
import { summaryDraft } from './summary-draft.ts'

type Writing = {
  readonly kind: KindName
  /** Nothing is drafted into an entry that corrects or settles another. */
  readonly isNew: boolean
  readonly subject: Subject | null
  readonly place: Place
  readonly ready: boolean
  readonly form: WithDrafted
  readonly put: (form: WithDrafted) => void
}

export type DraftedForm = {
  readonly operation: string
  readonly unsettled: readonly string[]
  readonly unread: readonly string[]
  /** Fields of which a later entry says something else. */
  readonly changed: readonly string[]
  /** Nobody typed or read anything in it yet. */
  readonly isOnlyDrafted: boolean
  readonly read: (fields: readonly string[]) => void
  readonly anew: (field: string) => void
}

/**
 * Drafts the summary of an operation that has none into its form: once on opening, and again when another operation is
 * chosen or somebody starts anew. What comes later is offered, never put in by itself. Null for every other form.
 */
export function useDrafted({ kind, isNew, subject, place, ready, form, put }: Writing): DraftedForm | null {
  const { file, operations } = useCaseView()
  const operation = operations.find(({ id }) => subject?.kind === 'operation' && subject.operation === id) ?? null
  const { zone, decimalMark, currency } = place
  const signed = operation && file.theCase.live('operation-summary').some((line) => isAbout(line, operation.id))
  const applies = kind === 'operation-summary' && isNew && operation !== null && !signed
  const draft = useMemo(
    () => (applies ? summaryDraft(file, operation, { zone, decimalMark, currency }) : null),
    [applies, file, operation, zone, decimalMark, currency],
  )
  const opened = useRef(false)
  useEffect(() => {
    if (!ready || !draft || !operation) return
    if (opened.current && form.drafted?.of === operation.id) return
    opened.current = true
    put(draftInto(form, draft.now, operation.id))
  })
  if (!draft || !operation || form.drafted?.of !== operation.id) return null
  const { drafted } = form
  return {
    operation: operation.id,
    unsettled: draft.unsettled,
    unread: unreadFields(form),
    changed: changedSince(form, draft.now),
    isOnlyDrafted: isOnlyDrafted(form, emptyDraft(formFor(kind))),
    read: (fields) => put({ ...form, drafted: markRead(drafted, fields) }),
    anew: (field) => put(draftAnew(form, draft.now, field)),
  }
}
