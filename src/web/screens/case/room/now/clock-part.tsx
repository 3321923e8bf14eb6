import { type FormEvent, useState } from 'react'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { RoomCall } from '#core/theatre/room-call.ts'
import type { Shout } from '#core/theatre/shouts.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { TextField } from '../../../../design/text-field.tsx'
import { useDraft } from '../../../../journal/drafts.ts'
import { useNow } from '../../../../journal/use-now.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './now.module.css'
import { sayClock } from './say-clock.ts'
import { useShouts } from './use-shouts.ts'

/** The clock of an emergency: it runs from the entry of the tap, also after a reload, until somebody calls it over. */
export function ClockPart({ operation, call }: { readonly operation: OperationOnFile; readonly call: RoomCall }) {
  const { file, unsent } = useCaseView()
  const { last, begin, takeBack, mayStamp } = useShouts(operation)
  const now = useNow(1_000)
  const shout = last(call)
  const about = (stamp: Stamp) => ({
    at: clockOf(stamp.at, stamp.header.happenedAt.zone),
    who: authorNamed(file, stamp.header.author),
  })
  if (!shout) {
    return (
      <div className={styles.clock}>
        <p>{mayStamp ? words.notRunning : words.mayNotStamp}</p>
        {mayStamp && (
          <button type="button" data-weight="main" onClick={() => void begin(call)}>
            {words.start}
          </button>
        )}
      </div>
    )
  }
  const clock = sayClock(shout, now)
  if (shout.ended) {
    const { text } = shout.ended.body
    return (
      <div className={styles.clock}>
        <p>
          <strong>{fill(words.overAt, { ...about(shout.ended), clock })}</strong> {text}
        </p>
        {mayStamp && (
          <button type="button" onClick={() => void begin(call)}>
            {words.again}
          </button>
        )}
      </div>
    )
  }
  return (
    <div className={styles.clock}>
      <p role="timer" aria-label={words.clock} className={styles.face}>
        {clock}
      </p>
      <p>
        {fill(words.since, about(shout.begun))}{' '}
        <span>({unsent.has(shout.begun.header.id) ? roomInEnglish.here : roomInEnglish.sent})</span>
      </p>
      {mayStamp && <OverPart operation={operation} shout={shout} onMistake={() => void takeBack(shout)} />}
    </div>
  )
}

/** Calls an emergency over, with a sentence if somebody has one. Two taps, because one may come from a sleeve. */
function OverPart(props: {
  readonly operation: OperationOnFile
  readonly shout: Shout
  readonly onMistake: () => void
}) {
  const { operation, shout, onMistake } = props
  const { me } = useWho()
  const { end } = useShouts(operation)
  const [open, setOpen] = useState(false)
  const { draft, change, clear, ready } = useDraft(`over ${shout.begun.header.id}`, me.id, () => ({ text: '' }))
  if (!open || !ready) {
    return (
      <p className="row">
        <button type="button" onClick={() => setOpen(true)}>
          {words.over}
        </button>
        <button type="button" data-weight="quiet" onClick={onMistake}>
          {words.mistake}
        </button>
      </p>
    )
  }
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    await end(shout, draft.text.trim() || null)
    await clear()
  }
  return (
    <form className={styles.over} onSubmit={(event) => void keep(event)} noValidate>
      <TextField label={words.overWords} autoComplete="off" value={draft.text} onText={(text) => change({ text })} />
      <p className="row">
        <button type="submit" data-weight="main">
          {words.keepOver}
        </button>
        <button type="button" data-weight="quiet" onClick={() => setOpen(false)}>
          {words.close}
        </button>
      </p>
    </form>
  )
}
