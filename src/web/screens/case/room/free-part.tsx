import { useState } from 'react'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { freeCheckpoint, freeStampsOf } from '#core/theatre/free-stamp.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { newId } from '../../../journal/device.ts'
import { useCaseView } from '../case-view.ts'
import { ReasonPart } from './reason-part.tsx'
import styles from './room.module.css'
import { useStamping } from './use-stamping.ts'

const words = roomInEnglish.free

/** What belongs to no point of the procedure: one tap keeps the moment, the words follow when a hand is free. */
export function FreePart({ operation, mayStamp }: { readonly operation: OperationOnFile; readonly mayStamp: boolean }) {
  const { file } = useCaseView()
  const { stamp } = useStamping(operation)
  const stamps = freeStampsOf(file.theCase, operation.id)
  if (stamps.length === 0 && !mayStamp) return null
  return (
    <section aria-labelledby="free" className={styles.loss}>
      <h2 id="free">{words.title}</h2>
      <ul className="bare">
        {stamps.map((one) => (
          <FreeStamp key={one.body.checkpoint} stamp={one} operation={operation} mayStamp={mayStamp} />
        ))}
      </ul>
      {mayStamp && (
        <p data-screen-only>
          <button type="button" onClick={() => void stamp(freeCheckpoint(newId()))}>
            {words.now}
          </button>
        </p>
      )}
    </section>
  )
}

function FreeStamp(props: { readonly stamp: Stamp; readonly operation: OperationOnFile; readonly mayStamp: boolean }) {
  const { stamp, operation, mayStamp } = props
  const { file, unsent } = useCaseView()
  const { answer, takeBack } = useStamping(operation)
  const [open, setOpen] = useState(false)
  const { header, body } = stamp
  const at = clockOf(stamp.at, header.happenedAt.zone)
  const waits = unsent.has(header.id)
  const close = () => setOpen(false)
  return (
    <li className={styles.row}>
      <p className={styles.stamped}>
        <strong>{fill(roomInEnglish.stampedAt, { at, who: authorNamed(file, header.author) })}</strong>{' '}
        <span className={styles.kept} data-waits={waits}>
          {waits ? roomInEnglish.here : roomInEnglish.sent}
        </span>
      </p>
      <p>{body.text ?? words.noWords}</p>
      {mayStamp && !open && (
        <p className={styles.acts} data-screen-only>
          <button type="button" aria-label={fill(words.saySaid, { at })} onClick={() => setOpen(true)}>
            {words.say}
          </button>
          <button
            type="button"
            data-weight="quiet"
            aria-label={fill(words.takeBackSaid, { at })}
            onClick={() => void takeBack(stamp)}
          >
            {roomInEnglish.taken}
          </button>
        </p>
      )}
      {open && (
        <ReasonPart
          place={`free ${header.id}`}
          words={{ label: words.what, missing: words.missing, keep: words.keep, close: roomInEnglish.close }}
          onKeep={async (text) => {
            await answer(stamp, { detail: body.detail as Record<string, string>, text })
            return true
          }}
          onClose={close}
        />
      )}
    </li>
  )
}
