import { type FormEvent, useState } from 'react'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useWho } from '../../../session/use-who.ts'
import { KeepOrClose } from '../keep-or-close.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './room.module.css'

/** Whatever is not done, or not answered with yes, says why; what was typed outlives a reload. */
export function ReasonPart(props: {
  /** What the draft is kept under on this device. */
  readonly place: string
  readonly words: { readonly label: string; readonly missing: string; readonly keep: string; readonly close: string }
  /** False when nothing could be kept yet: the reason stays. */
  readonly onKeep: (because: string) => Promise<boolean>
  readonly onClose: () => void
}) {
  const { place, words, onKeep, onClose } = props
  const { me } = useWho()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(place, me.id, () => ({ text: '' }))
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
        label={words.label}
        error={tries > 0 && because === '' ? words.missing : null}
        autoComplete="off"
        value={draft.text}
        onText={(text) => change({ text })}
      />
      <KeepOrClose keep={words.keep} close={words.close} onClose={onClose} />
    </form>
  )
}
