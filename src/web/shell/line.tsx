import { useState } from 'react'
import { Link } from 'wouter'
import { offlineInEnglish } from '#content/wording/app-offline.ts'
import { sessionInEnglish } from '#content/wording/app-session.ts'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { Modal } from '../design/modal.tsx'
import { connection } from '../journal/live.ts'
import { outbox, unreadable, waitingRows } from '../journal/outbox.ts'
import { useSignal } from '../journal/signal.ts'
import { session } from '../session/session.ts'
import { SignInForm } from '../session/sign-in.tsx'
import { useWho } from '../session/use-who.ts'
import styles from './line.module.css'

/** Says when the server does not hear us, and what waits on this device. Says nothing while all is well. */
export function Line() {
  const line = useSignal(connection)
  const waiting = [...useSignal(outbox), ...useSignal(waitingRows)]
  const refused = waiting.some(({ state }) => state === 'refused')
  const count = waiting.length
  const puzzles = useSignal(unreadable).length > 0
  const here = useSignal(session)
  const lapsed = here.kind === 'in' && here.lapsed
  if (lapsed) return <Lapsed count={count} />
  return (
    <div role="status" className={line === 'lost' || count > 0 || puzzles ? styles.line : 'said'} data-line={line}>
      {line === 'lost' ? <p>{words.connection.lost}</p> : <p className="said">{words.connection[line]}</p>}
      {count > 0 && (
        <p>
          <Link href="/kept">{sayCount(words.waiting, count)}</Link>
          {refused && ` · ${words.waiting.refused}`}
          {waiting.some(({ state }) => state === 'sign-in') && ` · ${words.waiting.signIn}`}
        </p>
      )}
      {puzzles && (
        <p>
          <Link href="/kept">{words.waiting.unreadable}</Link>
        </p>
      )}
    </div>
  )
}

/** The session ended on the server: whoever works goes on, and signs in when there is a hand free for it. */
function Lapsed({ count }: { readonly count: number }) {
  const { me } = useWho()
  const [open, setOpen] = useState(false)
  return (
    <div className={styles.lapsed}>
      <p role="status">{fill(offlineInEnglish.lapsed, { name: me.name })}</p>
      {count > 0 && (
        <p>
          <Link href="/kept">{sayCount(words.waiting, count)}</Link>
        </p>
      )}
      <button type="button" onClick={() => setOpen(true)}>
        {sessionInEnglish.signIn.enter}
      </button>
      {open && (
        <Modal
          title={sessionInEnglish.signIn.title}
          close={sessionInEnglish.people.close}
          onClose={() => setOpen(false)}
        >
          <SignInForm done={() => setOpen(false)} />
        </Modal>
      )}
    </div>
  )
}
