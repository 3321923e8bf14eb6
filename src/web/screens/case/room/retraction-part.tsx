import { Link } from 'wouter'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { retractionsOf } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { conflictHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './room.module.css'
import { useStamping } from './use-stamping.ts'

/** The nerve is held aside, and let go: each is a stamp, and the clock adds them up. */
export function RetractionPart({
  operation,
  mayStamp,
}: {
  readonly operation: OperationOnFile
  readonly mayStamp: boolean
}) {
  const { file, unsent, id } = useCaseView()
  const { stamp } = useStamping(operation)
  const held = retractionsOf(file.theCase, operation.id)
  const last = held.at(-1)
  const holds = last !== undefined && last.until === null
  const number = holds ? last.number : (last?.number ?? 0) + 1
  const zone = file.clinic.zone
  const stamps = linesAbout(file.theCase, 'theatre-stamp', operation.id)
  const stampsOf = (one: number) =>
    stamps.filter(({ body }) => [`retraction-on-${one}`, `retraction-off-${one}`].includes(body.checkpoint))
  const waits = (one: number) => stampsOf(one).some(({ header }) => unsent.has(header.id))
  const twice = (one: number) =>
    stampsOf(one).find(({ header }) => file.theCase.conflicts.some(({ between }) => between.includes(header.id)))
  return (
    <div className={styles.retraction}>
      <ul className="bare">
        {held.map((one) => {
          const doubled = twice(one.number)
          return (
            <li key={one.number}>
              {fill(one.until === null ? words.retraction : words.retractionOver, {
                number: String(one.number),
                from: clockOf(one.from, zone),
                until: one.until === null ? '' : clockOf(one.until, zone),
              })}{' '}
              <span className={styles.kept} data-waits={waits(one.number)}>
                {waits(one.number) ? words.here : words.sent}
              </span>
              {doubled && (
                <p className={styles.stop}>
                  {words.two} <Link href={conflictHref(id, doubled.header.id)}>{words.settle}</Link>
                </p>
              )}
            </li>
          )
        })}
      </ul>
      {mayStamp && (
        <button type="button" onClick={() => void stamp(`retraction-${holds ? 'off' : 'on'}-${number}`)}>
          {holds ? words.retractionOff : words.retractionOn}
        </button>
      )}
    </div>
  )
}
