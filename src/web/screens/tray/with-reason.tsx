import { type FormEvent, useState } from 'react'
import { trayInEnglish as words } from '#content/wording/app-tray.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Filed } from '#core/tray/tray.ts'
import { Field } from '../../design/field.tsx'
import { Modal } from '../../design/modal.tsx'
import { keepEntries } from '../../journal/outbox.ts'
import { useWho } from '../../session/use-who.ts'
import { type Arrived, takeBack, throwAway } from './filing.ts'

export function ThrowAway({ arrived, onClose }: { readonly arrived: Arrived; readonly onClose: () => void }) {
  const { pen } = useWho()
  return (
    <WithReason
      title={fill(words.awayTitle, { what: words.seems[arrived.body.seems] })}
      help={words.awayHelp}
      verb={words.awayDo}
      entries={(reason) => throwAway(pen, arrived, reason)}
      onClose={onClose}
    />
  )
}

export function TakeBack(props: { readonly filed: Filed; readonly name: string; readonly onClose: () => void }) {
  const { filed, name, onClose } = props
  const { pen } = useWho()
  return (
    <WithReason
      title={words.takeBackTitle}
      help={fill(words.takeBackHelp, { name })}
      verb={words.takeBackDo}
      entries={(reason) => takeBack(pen, filed, reason)}
      onClose={onClose}
    />
  )
}

/** Something that is undone says why, once, in a sentence. */
function WithReason(props: {
  readonly title: string
  readonly help: string
  readonly verb: string
  readonly entries: (reason: string) => readonly Entry[]
  readonly onClose: () => void
}) {
  const { title, help, verb, entries, onClose } = props
  const [reason, setReason] = useState('')
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    await keepEntries(entries(reason.trim()))
    onClose()
  }
  return (
    <Modal title={title} close={words.close} onClose={onClose}>
      <form className="stack" onSubmit={keep}>
        <p>{help}</p>
        <Field label={words.because} help={words.becauseHelp}>
          {(control) => (
            <input
              {...control}
              required
              pattern=".*\S.*"
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
