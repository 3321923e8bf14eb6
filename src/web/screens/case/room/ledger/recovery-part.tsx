import { owedRules } from '#content/follow-up/owed-rules.ts'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { type FirstEvent, recoveryOf } from '#core/theatre/recovery.ts'
import { clockOf } from '#core/time/moment.ts'
import { nameOfEvent, sayBlock, sayEffect, saySeen } from '#documents/anaesthetic-record/say-recovery.ts'
import { sayMinutes } from '#documents/case/say-minutes.ts'
import { Provenance } from '../../../../design/provenance.tsx'
import { useOneTap } from '../../../../journal/use-one-tap.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import { useStamping } from '../use-stamping.ts'
import styles from './ledger.module.css'
import { useObserving } from './use-observing.ts'

/** Waking up: one tap each for the first blink, the breastbone and warmth, with the time since tube out. */
export function RecoveryPart(props: {
  readonly operation: OperationOnFile
  readonly now: string
  readonly mayWrite: boolean
  /** Nobody waits any more: what was not written was not written, and nothing is tapped as of now. */
  readonly isOver: boolean
}) {
  const { operation, now, mayWrite, isOver } = props
  const { file } = useCaseView()
  const { me } = useWho()
  const { stamp } = useStamping(operation)
  const once = useOneTap()
  const recovery = recoveryOf(file, operation, now, owedRules.blockLasts)
  const { zone } = file.clinic
  const out = file.theCase
    .live('theatre-stamp')
    .findLast(({ at, body }) => body.checkpoint === 'tube-out' && body.answer === 'done' && at === recovery.tubeOut)
  const mayStamp = writersOf('theatre-stamp').includes(me.role)
  return (
    <section aria-labelledby="recovery" className={styles.recovery}>
      <h2 id="recovery">{words.recovery}</h2>
      {out ? (
        <p className={styles.out}>
          {fill(words.tubeOut, { at: clockOf(out.at, zone), who: authorNamed(file, out.header.author) })}{' '}
          <Sent id={out.header.id} />
        </p>
      ) : (
        <div className={styles.foot}>
          <p>{isOver ? words.tubeNot : words.tubeIn}</p>
          {mayStamp && !isOver && (
            <button type="button" data-screen-only onClick={() => once(() => stamp('tube-out'))}>
              {words.tubeOutNow}
            </button>
          )}
        </div>
      )}
      <ul className={`bare ${styles.events}`}>
        {recovery.events.map((event) => (
          <EventRow
            key={`${event.what} ${event.side}`}
            event={event}
            tubeOut={recovery.tubeOut}
            operation={operation}
            mayWrite={mayWrite}
            isOver={isOver}
          />
        ))}
      </ul>
      <p className="soft">{words.normal}</p>
      <h3>{words.block}</h3>
      {recovery.blocks.length === 0 && <p>{ledgerInEnglish.recovery.noBlock}</p>}
      <ul className="bare">
        {recovery.blocks.map((block) => (
          <li key={block.given.header.id}>
            {sayBlock(block, zone)} {block.lasts && <Provenance fact={block.lasts} />}
          </li>
        ))}
      </ul>
      {recovery.effects.map((effect) => (
        <p key={effect.side} className={styles.effect}>
          {sayEffect(effect, zone)}
        </p>
      ))}
    </section>
  )
}

function EventRow(props: {
  readonly event: FirstEvent
  readonly tubeOut: string | null
  readonly operation: OperationOnFile
  readonly mayWrite: boolean
  readonly isOver: boolean
}) {
  const { event, tubeOut, operation, mayWrite, isOver } = props
  const { file } = useCaseView()
  const { first, takeBack } = useObserving(operation)
  const once = useOneTap()
  const what = nameOfEvent(event)
  const { seen, minutes, side } = event
  const said = saySeen(event, tubeOut, file.clinic.zone)
  if (seen) {
    return (
      <li className={styles.eventRow} data-seen="true">
        <div>
          <strong>{what}</strong>
          <p>
            {fill(words.seen, { seen: said ?? '', who: authorNamed(file, seen.header.author) })}{' '}
            <Sent id={seen.header.id} />
          </p>
        </div>
        {mayWrite && event.how === 'tap' && (
          <button
            type="button"
            data-weight="quiet"
            data-screen-only
            aria-label={fill(words.takeBackSaid, { what })}
            onClick={() => once(() => takeBack(seen))}
          >
            {words.takeBack}
          </button>
        )}
      </li>
    )
  }
  return (
    <li className={styles.eventRow}>
      <div>
        <strong>{what}</strong>
        {isOver && <p className={styles.waiting}>{words.notWritten}</p>}
        {!isOver && minutes !== null && (
          <p className={styles.waiting}>{fill(ledgerInEnglish.recovery.waiting, { span: sayMinutes(minutes) })}</p>
        )}
      </div>
      {mayWrite && !isOver && (
        <button
          type="button"
          data-weight={tubeOut === null ? undefined : 'main'}
          data-screen-only
          onClick={() => once(() => first(event.what, side))}
        >
          {fill(words.seenNow, { what })}
        </button>
      )}
    </li>
  )
}

function Sent({ id }: { readonly id: string }) {
  const waits = useCaseView().unsent.has(id)
  return (
    <span className={room.kept} data-waits={waits}>
      {waits ? roomInEnglish.here : roomInEnglish.sent}
    </span>
  )
}
