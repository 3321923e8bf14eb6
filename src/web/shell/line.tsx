import { Link } from 'wouter'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { connection } from '../journal/live.ts'
import { outbox, unreadable, waitingRows } from '../journal/outbox.ts'
import { useSignal } from '../journal/signal.ts'
import styles from './line.module.css'

/** Says when the server does not hear us, and what waits on this device. Says nothing while all is well. */
export function Line() {
  const line = useSignal(connection)
  const waiting = [...useSignal(outbox), ...useSignal(waitingRows)]
  const refused = waiting.some(({ state }) => state === 'refused')
  const count = waiting.length
  const puzzles = useSignal(unreadable).length > 0
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
