import type { FormEvent } from 'react'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { Checkpoint } from '#core/procedures/procedure.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useWho } from '../../../session/use-who.ts'
import { KeepOrClose } from '../keep-or-close.tsx'
import styles from './room.module.css'
import { useStamping } from './use-stamping.ts'

/** The answers of a stamp that stands: each with one tap, none chosen beforehand; the moment of the stamp stays. */
export function AnswersPart(props: {
  readonly stamp: Stamp
  readonly checkpoint: Checkpoint
  readonly operation: OperationOnFile
  readonly onClose: () => void
}) {
  const { stamp, checkpoint, operation, onClose } = props
  const { me } = useWho()
  const { answer } = useStamping(operation)
  const { draft, change, clear, ready } = useDraft(`answers ${stamp.header.id}`, me.id, () => ({
    detail: stamp.body.detail as Readonly<Record<string, string>>,
    text: stamp.body.text ?? '',
  }))
  if (!ready) return null
  const set = (id: string, value: string) => change({ ...draft, detail: { ...draft.detail, [id]: value } })
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const said = Object.entries(draft.detail)
      .map(([id, value]) => [id, value.trim()] as const)
      .filter(([, value]) => value !== '')
    await answer(stamp, { detail: Object.fromEntries(said), text: draft.text.trim() || null })
    await clear()
    onClose()
  }
  return (
    <form className={styles.part} onSubmit={(event) => void keep(event)} noValidate>
      {checkpoint.details.map((detail) =>
        detail.kind === 'coded' ? (
          <Choices
            key={detail.id}
            legend={detail.asks}
            value={draft.detail[detail.id] ?? null}
            options={Object.keys(detail.answers)}
            say={(one) => one.replaceAll('-', ' ')}
            onChoose={(one) => set(detail.id, one)}
          />
        ) : (
          <TextField
            key={detail.id}
            label={detail.asks}
            inputMode={detail.kind === 'number' ? 'decimal' : undefined}
            maxLength={200}
            autoComplete="off"
            value={draft.detail[detail.id] ?? ''}
            onText={(text) => set(detail.id, text)}
          />
        ),
      )}
      <TextField
        label={words.text}
        autoComplete="off"
        value={draft.text}
        onText={(text) => change({ ...draft, text })}
      />
      <KeepOrClose keep={words.keep} close={words.close} onClose={onClose} />
    </form>
  )
}
