import { Link } from 'wouter'
import { draftSummaryInEnglish as words } from '#content/wording/app-draft-summary.ts'
import { wordsAt } from '#core/forms/words.ts'
import type { KindName } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { Notice } from '../../../design/notice.tsx'
import { wordsFor } from '../../../forms/forms.ts'
import { roomHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import type { DraftedForm } from './use-drafted.ts'
import styles from './write.module.css'

type Part = { readonly kind: KindName; readonly drafted: DraftedForm }

/** Above the form: where its answers come from, and what could not be drafted because two entries disagree. */
export function DraftedLead({ drafted }: Pick<Part, 'drafted'>) {
  const { id } = useCaseView()
  return (
    <Notice title={words.title}>
      <p>{words.lead}</p>
      {drafted.unsettled.length > 0 && (
        <p>
          <strong>{fill(words.unsettled, { what: drafted.unsettled.join(', ') })}</strong>{' '}
          <Link href={roomHref(id, drafted.operation)}>{words.toRecord}</Link>
        </p>
      )}
    </Notice>
  )
}

/** Under one field: that nobody read what was drafted, or that an entry came since. */
export function DraftedMark({ kind, drafted, field }: Part & { readonly field: string }) {
  const about = { field: labelOf(kind, field) }
  const isChanged = drafted.changed.includes(field)
  const isUnread = drafted.unread.includes(field)
  if (!isChanged && !isUnread) return null
  return (
    <div className={styles.drafted}>
      {isUnread && (
        <p>
          <span>{words.unread}</span>{' '}
          <button type="button" aria-label={fill(words.readOneOf, about)} onClick={() => drafted.read([field])}>
            {words.readOne}
          </button>
        </p>
      )}
      {isChanged && (
        <p>
          <span>{words.later}</span>{' '}
          <button type="button" aria-label={fill(words.anewOf, about)} onClick={() => drafted.anew(field)}>
            {words.anew}
          </button>
        </p>
      )}
    </div>
  )
}

/** Before the buttons: what is still unread by name, and the one tap that says it was read. */
export function DraftedUnread({ kind, drafted, error }: Part & { readonly error: string | null }) {
  if (drafted.unread.length === 0) return null
  const fields = drafted.unread.map((field) => labelOf(kind, field)).join(', ')
  return (
    <Notice tone={error ? 'warn' : 'plain'} live={error !== null}>
      {error && <p className={styles.error}>{error}</p>}
      <p>{fill(words.notRead, { fields })}</p>
      <p>
        <button type="button" onClick={() => drafted.read(drafted.unread)}>
          {words.readAll}
        </button>
      </p>
    </Notice>
  )
}

function labelOf(kind: KindName, field: string): string {
  return wordsAt(wordsFor(kind), field)?.label ?? field
}
