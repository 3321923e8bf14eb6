import { keptInEnglish as words } from '#content/wording/app-kept.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { fill } from '#core/outcome/finding.ts'
import { Page } from '../../design/page.tsx'
import { sayWhen } from '../../design/say-when.ts'
import type { Waiting, WaitingRow } from '../../journal/database.ts'
import { dropRefused, dropRefusedRow, outbox, sendNow, waitingRows } from '../../journal/outbox.ts'
import { useSignal } from '../../journal/signal.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './screen.module.css'

const names: Readonly<Record<string, string>> = kindsInEnglish

/** What this device wrote and the server does not have yet. */
export function KeptScreen() {
  const waiting = useSignal(outbox)
  const rows = useSignal(waitingRows)
  const count = waiting.length + rows.length
  const again = (
    <button type="button" onClick={() => void sendNow()}>
      {words.sendNow}
    </button>
  )
  return (
    <Page title={words.title} lead={words.lead} actions={count > 0 && again}>
      {count === 0 ? <p>{words.none}</p> : null}
      <ol className={`bare ${styles.entries}`}>
        {rows.map((row) => (
          <KeptRow key={row.id} row={row} />
        ))}
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
      <h2>{names[entry.kind] ?? entry.kind}</h2>
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

/** A new owner or vet: the entries that name them may arrive first, the name follows. */
function KeptRow({ row: { id, body, state, because } }: { readonly row: WaitingRow }) {
  return (
    <li className={styles.entry}>
      <h2>{fill(words.contact, { name: body.name })}</h2>
      <p>
        <strong>{words.states[state]}</strong>
        {state === 'refused' && `: ${because ?? ''}`}
      </p>
      {state === 'refused' && (
        <p>
          <button type="button" onClick={() => confirm(words.dropSure) && void dropRefusedRow(id)}>
            {words.drop}
          </button>
        </p>
      )}
    </li>
  )
}
