import { keptInEnglish as words } from '#content/wording/app-kept.ts'
import { fill } from '#core/outcome/finding.ts'
import { Page } from '../../design/page.tsx'
import { sayWhen } from '../../design/say-when.ts'
import type { Waiting } from '../../journal/database.ts'
import { dropRefused, outbox, sendNow } from '../../journal/outbox.ts'
import { useSignal } from '../../journal/signal.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './screen.module.css'

/** What this device wrote and the server does not have yet. */
export function KeptScreen() {
  const waiting = useSignal(outbox)
  const again = (
    <button type="button" onClick={() => void sendNow()}>
      {words.sendNow}
    </button>
  )
  return (
    <Page title={words.title} lead={words.lead} actions={waiting.length > 0 && again}>
      {waiting.length === 0 ? <p>{words.none}</p> : null}
      <ol className={`bare ${styles.entries}`}>
        {waiting.map((one) => (
          <KeptEntry key={one.entry.id} waiting={one} />
        ))}
      </ol>
    </Page>
  )
}

function KeptEntry({ waiting: { entry, state, because } }: { readonly waiting: Waiting }) {
  const { people, pen } = useWho()
  const { author } = entry
  const who = author.kind === 'person' ? (people.find(({ id }) => id === author.person)?.name ?? author.person) : ''
  return (
    <li className={styles.entry}>
      <h2>{entry.kind}</h2>
      <p>{fill(words.written, { when: sayWhen(entry.writtenAt, pen.zone), who })}</p>
      <p>
        <strong>{words.states[state]}</strong>
        {state === 'refused' && `: ${because ?? words.keptAside}`}
      </p>
      <details>
        <summary>{words.text}</summary>
        <pre className={styles.text}>{JSON.stringify(entry.body, null, 2)}</pre>
      </details>
      {state === 'refused' && (
        <p>
          <button type="button" onClick={() => confirm(words.dropSure) && void dropRefused(entry.id)}>
            {words.drop}
          </button>
        </p>
      )}
    </li>
  )
}
