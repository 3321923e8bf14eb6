import { Link } from 'wouter'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { signOutInEnglish as words } from '#content/wording/app-sign-out.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { sayPoint } from '#documents/operation-report/sign-out.ts'
import { Notice } from '../../../../design/notice.tsx'
import { entryHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import { PointLine } from './point-line.tsx'
import styles from './sign-out.module.css'
import { useSignOut } from './use-sign-out.ts'

/** The end of the last pause: what stands in the way and what settles it, or the one tap that signs the operation out. */
export function SignOutPart({ operation }: { readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const { state, stamp, points, unsettled, maySign, sign, takeBack } = useSignOut(operation)
  const explained = points.filter(({ note }) => note !== null)
  return (
    <section aria-labelledby="sign-out" className={styles.signOut}>
      <h2 id="sign-out">{words.title}</h2>
      <p>{words.lead}</p>
      {stamp && <Signed stamp={stamp} doubt={state === 'in-doubt'} />}
      {unsettled.length > 0 && (
        <Notice tone="warn" title={words.stops}>
          <ul className={`bare ${styles.points}`}>
            {unsettled.map((point) => (
              <PointLine key={`${point.code} ${point.of}`} point={point} operation={operation} />
            ))}
          </ul>
        </Notice>
      )}
      {explained.length > 0 && (
        <div>
          <p>{words.explained}</p>
          <ul>
            {explained.map(({ note, ...point }) => (
              <li key={`${point.code} ${point.of}`}>
                {sayPoint(point)} {note?.body.text}{' '}
                {note && (
                  <Link href={entryHref(id, note.header.id)} className={styles.act}>
                    {words.note}
                  </Link>
                )}
              </li>
            ))}
          </ul>
        </div>
      )}
      {!maySign && <p>{words.mayNot}</p>}
      {maySign && stamp === null && unsettled.length === 0 && (
        <>
          <p className={room.stamped}>{words.ready}</p>
          <button type="button" data-weight="main" className={styles.now} onClick={() => void sign()}>
            {words.now}
          </button>
        </>
      )}
      {maySign && stamp && (
        <p data-screen-only>
          <button type="button" data-weight="quiet" onClick={() => void takeBack(stamp)}>
            {words.takeBack}
          </button>
        </p>
      )}
    </section>
  )
}

function Signed({ stamp: { at, header }, doubt }: { readonly stamp: Stamp; readonly doubt: boolean }) {
  const { file, unsent } = useCaseView()
  const waits = unsent.has(header.id)
  const about = { at: clockOf(at, header.happenedAt.zone), who: authorNamed(file, header.author) }
  return (
    <p className={doubt ? room.stop : styles.done} role="status">
      {fill(doubt ? words.doubt : words.done, about)}{' '}
      <span className={room.kept} data-waits={waits}>
        {waits ? roomInEnglish.here : roomInEnglish.sent}
      </span>
    </p>
  )
}
