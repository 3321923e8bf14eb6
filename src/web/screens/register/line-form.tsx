import { type FormEvent, useState } from 'react'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { shellInEnglish } from '#content/wording/app-shell.ts'
import { type Draft, withDraftAt } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import { readDraft } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { Register } from '#core/register/register.ts'
import { DraftAwaited } from '../../design/draft-awaited.tsx'
import { Modal } from '../../design/modal.tsx'
import { TextField } from '../../design/text-field.tsx'
import { EntryForm } from '../../forms/entry-form.tsx'
import { formFor } from '../../forms/forms.ts'
import { useLists } from '../../journal/cases.ts'
import { useDraft } from '../../journal/drafts.ts'
import { momentAgain } from '../../journal/moment-again.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'

/** The line that is amended, null for a new one; and every line it stands in conflict with. */
export type Amending = { readonly entry: Line<BodyOf<'register-line'>> | null; readonly others: readonly string[] }

/** A line of the register, new or amended; what stood before stays readable. */
export function LineForm(props: {
  readonly register: Register
  readonly file: CaseFile
  readonly amending: Amending
  readonly onClose: () => void
}) {
  const { register, file, amending, onClose } = props
  const { entry, others } = amending
  const { me, pen, clinic } = useWho()
  const { zone, decimalMark, currency } = clinic.row
  const place: Place = { zone, decimalMark, currency }
  const form = formFor('register-line')
  const { drug, strength, form: shape, stream } = register
  const { draft, change, clear, ready } = useDraft<Draft>(`${stream} ${entry?.header.id ?? 'new'}`, me.id, () =>
    entry
      ? draftOf(form, entry.body, place)
      : Object.entries({ drug, strength, form: shape }).reduce<Draft>(
          (all, [name, value]) => withDraftAt(all, name, { text: '', stands: value }),
          emptyDraft(form),
        ),
  )
  const [refusals, setRefusals] = useState<readonly FieldRefusal[]>([])
  const [reason, setReason] = useState('')
  const [both, setBoth] = useState(false)
  const [tried, setTried] = useState(false)
  const reasonMissing = entry !== null && reason.trim() === ''
  const reading = useLists()
  const cases = reading.kind === 'read' ? reading.value.cases : []
  const choices = {
    registers: {
      case: [...cases]
        .sort((a, b) => (a.name < b.name ? -1 : 1))
        .map((one) => ({ id: one.stream, label: [one.name, one.ownerName].filter(Boolean).join(', ') })),
      person: [...file.people]
        .filter(([id]) => id !== me.id)
        .map(([id, { name, role }]) => ({ id, label: `${name}, ${shellInEnglish.roles[role]}` })),
    },
    entries: () => [],
    checkpoints: [],
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const read = readDraft(form, draft, place)
    setRefusals(read.kind === 'refusal' ? read.refusal : [])
    if (read.kind === 'refusal' || reasonMissing) return
    await writeEntry(pen, {
      kind: 'register-line',
      stream,
      subject: { kind: 'clinic' },
      body: read.answer,
      // An amended line stays in the place where it happened; only its words are new.
      happenedAt: entry ? momentAgain(entry) : null,
      supersedes: entry ? (both ? others : [entry.header.id]) : [],
      reason: entry ? reason.trim() : null,
    })
    await clear()
    onClose()
  }
  if (!ready) return <DraftAwaited />
  return (
    <Modal title={entry ? words.amendTitle : words.addTitle} close={settingsInEnglish.cancel} onClose={onClose}>
      <form onSubmit={(event) => void keep(event)} noValidate>
        <EntryForm
          kind="register-line"
          draft={draft}
          onDraft={change}
          refusals={refusals}
          place={place}
          choices={choices}
        >
          {entry && (
            <>
              <p>{words.amendHelp}</p>
              {others.length > 1 && (
                <label>
                  <input type="checkbox" checked={both} onChange={(event) => setBoth(event.target.checked)} />{' '}
                  {words.both}
                </label>
              )}
              <TextField
                label={words.reason}
                error={tried && reasonMissing ? formRefusals['not-written'] : null}
                autoComplete="off"
                value={reason}
                onText={setReason}
              />
            </>
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
