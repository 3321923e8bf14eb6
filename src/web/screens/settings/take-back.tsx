import { type FormEvent, useState } from 'react'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { Field } from '../../design/field.tsx'
import { Modal } from '../../design/modal.tsx'
import { keepEntries } from '../../journal/outbox.ts'
import { makeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'

/** Takes entries of the house back, once, with a reason. They stay readable in the history. */
export function TakeBack(props: {
  readonly ids: readonly string[]
  readonly title: string
  readonly help: string
  readonly because: string
  readonly verb: string
  readonly onClose: () => void
}) {
  const { ids, title, help, because, verb, onClose } = props
  const { pen } = useWho()
  const [reason, setReason] = useState('')
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const withdrawals = ids.map((withdraws) =>
      makeEntry(pen, {
        kind: 'withdrawal',
        stream: 'clinic',
        subject: { kind: 'clinic' },
        body: { because: 'other' },
        withdraws,
        reason: reason.trim(),
      }),
    )
    await keepEntries(withdrawals)
    onClose()
  }
  return (
    <Modal title={title} close={settingsInEnglish.cancel} onClose={onClose}>
      <form className="stack" onSubmit={keep}>
        <p>{help}</p>
        <Field label={because}>
          {(control) => (
            <input
              {...control}
              required
              pattern=".*\S.*"
              autoComplete="off"
              value={reason}
              onChange={(event) => setReason(event.target.value)}
            />
          )}
        </Field>
        <p>
          <button type="submit" data-weight="main">
            {verb}
          </button>
        </p>
      </form>
    </Modal>
  )
}
