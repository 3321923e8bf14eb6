import { type FormEvent, useState } from 'react'
import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { TextField } from '../../../../design/text-field.tsx'
import { useDraft } from '../../../../journal/drafts.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useFaultFocus } from '../../use-fault-focus.ts'
import styles from './pause.module.css'

/** An answer that is not yes says why. */
export function WhyPart(props: {
  readonly answer: 'no' | 'unknown'
  /** What the draft is kept under on this device. */
  readonly place: string
  readonly onKeep: (because: string) => Promise<boolean>
  readonly onClose: () => void
}) {
  const { answer, place, onKeep, onClose } = props
  const { me } = useWho()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`pause ${place}`, me.id, () => ({ text: '' }))
  if (!ready) return null
  const because = draft.text.trim()
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (because === '' || !(await onKeep(because))) return
    await clear()
    onClose()
  }
  return (
    <form ref={form} className={styles.part} onSubmit={(event) => void keep(event)} noValidate>
      <TextField
        label={words.whyNot[answer]}
        error={tries > 0 && because === '' ? words.whyNotMissing : null}
        autoComplete="off"
        value={draft.text}
        onText={(text) => change({ text })}
      />
      <p className="row">
        <button type="submit" data-weight="main">
          {words.keepNot[answer]}
        </button>
        <button type="button" data-weight="quiet" onClick={onClose}>
          {words.close}
        </button>
      </p>
    </form>
  )
}
