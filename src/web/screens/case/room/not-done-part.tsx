import { type FormEvent, useState } from 'react'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { ToStamp } from '#core/theatre/stamps.ts'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useWho } from '../../../session/use-who.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './room.module.css'
import { useStamping } from './use-stamping.ts'

/** A checkpoint that was not done says why. */
export function NotDonePart(props: {
  readonly item: ToStamp
  readonly operation: OperationOnFile
  readonly onClose: () => void
}) {
  const { item, operation, onClose } = props
  const { me } = useWho()
  const { stamp } = useStamping(operation)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`not-done ${operation.id} ${item.id}`, me.id, () => ({ text: '' }))
  if (!ready) return null
  const missing = draft.text.trim() === ''
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (missing) return
    await stamp(item.id, { answer: 'not-done', text: draft.text.trim() })
    await clear()
    onClose()
  }
  return (
    <form ref={form} className={styles.part} onSubmit={(event) => void keep(event)} noValidate>
      <TextField
        label={words.because}
        error={tries > 0 && missing ? words.becauseMissing : null}
        autoComplete="off"
        value={draft.text}
        onText={(text) => change({ text })}
      />
      <p className="row">
        <button type="submit" data-weight="main">
          {words.keepNotDone}
        </button>
        <button type="button" data-weight="quiet" onClick={onClose}>
          {words.close}
        </button>
      </p>
    </form>
  )
}
