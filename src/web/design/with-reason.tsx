import { type FormEvent, useState } from 'react'
import type { Entry } from '#core/journal/entry.ts'
import { keepEntries } from '../journal/outbox.ts'
import { Modal } from './modal.tsx'
import { TextField } from './text-field.tsx'

/** Something that is undone says why, once, in a sentence. */
export function WithReason(props: {
  readonly title: string
  readonly help: string
  readonly because: string
  readonly becauseHelp?: string
  readonly verb: string
  readonly close: string
  readonly entries: (reason: string) => readonly Entry[]
  readonly onClose: () => void
}) {
  const { title, help, because, becauseHelp, verb, close, entries, onClose } = props
  const [reason, setReason] = useState('')
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    await keepEntries(entries(reason.trim()))
    onClose()
  }
  return (
    <Modal title={title} close={close} onClose={onClose}>
      <form className="stack" onSubmit={keep}>
        <p>{help}</p>
        <TextField
          label={because}
          help={becauseHelp}
          required
          pattern=".*\S.*"
          autoComplete="off"
          value={reason}
          onText={setReason}
        />
        <p>
          <button type="submit" data-weight="main">
            {verb}
          </button>
        </p>
      </form>
    </Modal>
  )
}
