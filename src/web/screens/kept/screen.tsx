import { Link } from 'wouter'
import { keptInEnglish as words } from '#content/wording/app-kept.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { fill } from '#core/outcome/finding.ts'
import { Page } from '../../design/page.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { useLists } from '../../journal/cases.ts'
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
      {count === 0 && (
        <>
          <p>{words.none}</p>
          <p>
            <Link href="/">{words.back}</Link>
          </p>
        </>
      )}
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
  const animal = useAnimalNamed(entry.stream)
  const kind = names[entry.kind] ?? entry.kind
  const who = author.kind === 'person' ? (people.find(({ id }) => id === author.person)?.name ?? author.person) : ''
  return (
    <li className={styles.entry}>
      <h2>{animal === null ? kind : fill(words.of, { kind, name: animal })}</h2>
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

/** The animal whose case a stream is; null for the clinic's own streams and for a case that no list has yet. */
function useAnimalNamed(stream: string): string | null {
  const reading = useLists()
  if (reading.kind !== 'read') return null
  return reading.value.cases.find((row) => row.stream === stream)?.name ?? null
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
