import { type FormEvent, useState } from 'react'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { shelfInEnglish as words } from '#content/wording/app-settings-doses.ts'
import type { Draft } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import { readDraft } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { DraftAwaited } from '../../design/draft-awaited.tsx'
import { Modal } from '../../design/modal.tsx'
import { TextField } from '../../design/text-field.tsx'
import { EntryForm } from '../../forms/entry-form.tsx'
import { formFor } from '../../forms/forms.ts'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { drugs } from './drugs.ts'
import { replacedBy } from './house-lines.ts'

const choices = {
  registers: { drug: drugs.map(({ id, name }) => ({ id, label: name })) },
  entries: () => [],
  checkpoints: [],
} as const

/** A product, new or changed; what it said before stays in the history. */
export function ShelfForm(props: {
  readonly house: Case
  readonly item: Line<BodyOf<'shelf-item'>> | null
  readonly onClose: () => void
}) {
  const { house, item, onClose } = props
  const { me, pen, clinic } = useWho()
  const { zone, decimalMark, currency } = clinic.row
  const place: Place = { zone, decimalMark, currency }
  const form = formFor('shelf-item')
  const { draft, change, clear, ready } = useDraft<Draft>(`shelf-item ${item?.header.id ?? 'new'}`, me.id, () =>
    item ? draftOf(form, item.body, place) : emptyDraft(form),
  )
  const [reason, setReason] = useState('')
  const [tried, setTried] = useState(false)
  const reasonMissing = item !== null && reason.trim() === ''
  const [refusals, setRefusals] = useState<readonly FieldRefusal[]>([])
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const read = readDraft(form, draft, place)
    if (read.kind === 'refusal') return setRefusals(read.refusal)
    setRefusals([])
    if (reasonMissing) return
    await writeEntry(pen, {
      kind: 'shelf-item',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: read.answer,
      supersedes: replacedBy(house, item),
      reason: item ? reason.trim() : null,
    })
    await clear()
    onClose()
  }
  if (!ready) return <DraftAwaited />
  return (
    <Modal
      title={item ? fill(words.changeTitle, { label: item.body.label }) : words.addTitle}
      close={settingsInEnglish.cancel}
      onClose={onClose}
    >
      <form onSubmit={keep} noValidate>
        <EntryForm kind="shelf-item" draft={draft} onDraft={change} refusals={refusals} place={place} choices={choices}>
          {item && (
            <TextField
              label={words.reason}
              help={words.reasonHelp}
              error={tried && reasonMissing ? formRefusals['not-written'] : null}
              autoComplete="off"
              value={reason}
              onText={setReason}
            />
          )}
          <p>
            <button type="submit" data-weight="main">
              {settingsInEnglish.save}
            </button>
          </p>
        </EntryForm>
      </form>
    </Modal>
  )
}
