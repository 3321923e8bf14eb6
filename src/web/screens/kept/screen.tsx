import { type ReactNode, Suspense, useRef } from 'react'
import { Link } from 'wouter'
import { keptInEnglish as words } from '#content/wording/app-kept.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { lazyPart } from '../../ahead.tsx'
import { Page } from '../../design/page.tsx'
import { saveText } from '../../design/save-text.ts'
import { sayWhen } from '../../design/say-when.ts'
import { SideWord } from '../../design/side-word.tsx'
import { useLists } from '../../journal/cases.ts'
import type { Waiting, WaitingRow } from '../../journal/database.ts'
import { caseHref } from '../../journal/hrefs.ts'
import {
  dropRefused,
  dropRefusedRow,
  outbox,
  sendNow,
  sendRefused,
  setUnreadableAside,
  unreadable,
  waitingRows,
} from '../../journal/outbox.ts'
import type { Unreadable } from '../../journal/readable.ts'
import { useSignal } from '../../journal/signal.ts'
import { useWho } from '../../session/use-who.ts'
import { Fault } from '../../shell/fault.tsx'
import styles from './screen.module.css'

const InWords = lazyPart(() => import('./in-words.tsx'))
const CorrectLink = lazyPart(() => import('./correct-link.tsx'))

const names: Readonly<Record<string, string>> = kindsInEnglish

/** What this device wrote and the server does not have yet. */
export function KeptScreen() {
  const waiting = useSignal(outbox)
  const rows = useSignal(waitingRows)
  const lost = useSignal(unreadable)
  const again = (
    <button type="button" onClick={() => void sendNow()}>
      {words.sendNow}
    </button>
  )
  if (waiting.length + rows.length + lost.length === 0) return <Nothing />
  return (
    <Page title={words.title} lead={words.lead} actions={again}>
      <ol className={`bare ${styles.entries}`}>
        {lost.map((one) => (
          <KeptUnreadable key={`${one.store} ${one.key}`} unreadable={one} />
        ))}
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

function Nothing() {
  return (
    <Page title={words.title}>
      <section className={styles.nothing}>
        <h2>{words.none}</h2>
        <p>{words.noneHelp}</p>
        <p>
          <Link href="/">{words.back}</Link>
        </p>
      </section>
    </Page>
  )
}

function KeptEntry({ waiting }: { readonly waiting: Waiting }) {
  const { entry } = waiting
  const { people, pen } = useWho()
  const { author, subject, stream, reason } = entry
  const animal = useAnimalNamed(stream)
  const kind = names[entry.kind] ?? entry.kind
  const who = author.kind === 'person' ? (people.find(({ id }) => id === author.person)?.name ?? author.person) : ''
  const hasCase = stream.startsWith('case:')
  return (
    <Kept
      title={animal === null ? kind : fill(words.of, { kind, name: animal })}
      mark={subject.kind === 'ear' && <SideWord side={subject.side} />}
      of={{ ...waiting, id: entry.id, who, whole: entry }}
      links={
        hasCase && (
          <>
            <li>
              <Link href={caseHref(stream)}>{words.toCase}</Link>
            </li>
            {waiting.state === 'refused' && (
              <Fault quiet>
                <Suspense fallback={null}>
                  <CorrectLink entry={entry} />
                </Suspense>
              </Fault>
            )}
          </>
        )
      }
      drop={dropRefused}
    >
      <p className="soft">
        {fill(words.happened, { when: sayMoment(entry.happenedAt) })}
        <br />
        {fill(words.written, { when: sayWhen(entry.writtenAt, pen.zone), who })}
      </p>
      {reason !== null && <p>{fill(words.reason, { reason })}</p>}
      <Fault instead={words.notInWords}>
        <Suspense fallback={<p role="status">{words.reading}</p>}>
          <InWords entry={entry} aside={isAside(waiting)} />
        </Suspense>
      </Fault>
    </Kept>
  )
}

/** The animal whose case a stream is; null for the clinic's own streams and for a case that no list has yet. */
function useAnimalNamed(stream: string): string | null {
  const reading = useLists()
  if (reading.kind !== 'read') return null
  return reading.value.cases.find((row) => row.stream === stream)?.name ?? null
}

/** A new owner or vet: the entries that name them may arrive first, the name follows. */
function KeptRow({ row }: { readonly row: WaitingRow }) {
  const { people } = useWho()
  const { practice, phone, email, address, name } = row.body
  const said = { practice, phone, email, address: address.join(', ') || null }
  const who = people.find(({ id }) => id === row.by)?.name ?? row.by
  return (
    <Kept title={fill(words.contact, { name })} of={{ ...row, who, whole: row.body }} drop={dropRefusedRow}>
      <dl className={styles.facts}>
        {Object.entries(words.contactFields).map(([field, label]) => {
          const value = said[field as keyof typeof said]
          return (
            value !== null && (
              <div key={field}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            )
          )
        })}
      </dl>
    </Kept>
  )
}

/** What this program cannot read is shown as the text it is; a person takes it away, and it holds nothing else up. */
function KeptUnreadable({ unreadable: found }: { readonly unreadable: Unreadable }) {
  const { text } = found
  const setAside = () => {
    if (!confirm(words.setAsideSure)) return
    saveText(words.unreadable, text)
    void setUnreadableAside(found)
  }
  return (
    <li className={styles.entry} data-state="refused">
      <h2 className={styles.title}>{words.unreadable}</h2>
      <p>
        <strong>{words.unreadableState}</strong>
        <br />
        {words.unreadableHelp}
      </p>
      <details>
        <summary>{words.text}</summary>
        <pre className={styles.text}>{text}</pre>
      </details>
      <ul className={`bare ${styles.actions}`}>
        <li>
          <button type="button" onClick={() => saveText(words.unreadable, text)}>
            {words.copy}
          </button>
        </li>
        <li>
          <button type="button" data-weight="quiet" onClick={setAside}>
            {words.setAside}
          </button>
        </li>
      </ul>
    </li>
  )
}

/** The server has other bytes under the id of this entry: there is nothing that it said about them. */
function isAside({ state, because }: Pick<Waiting, 'state' | 'because'>): boolean {
  return state === 'refused' && because === null
}

/** One thing that is kept: what it is, how it stands, what it says, and what can be done with it. */
function Kept(props: {
  readonly title: string
  readonly mark?: ReactNode
  readonly of: Pick<Waiting, 'state' | 'because'> & {
    readonly id: string
    readonly who: string
    readonly whole: object
  }
  readonly links?: ReactNode
  readonly drop: (id: string) => Promise<void>
  readonly children: ReactNode
}) {
  const { title, mark, of, links, drop, children } = props
  const { id, who, whole, because } = of
  const said = useRef<HTMLDivElement>(null)
  const state = isAside(of) ? 'kept-aside' : of.state
  const text = JSON.stringify(whole, null, 2)
  return (
    <li className={styles.entry} data-state={state}>
      <div ref={said} className={styles.said}>
        <h2 className={styles.title}>
          {title} {mark}
        </h2>
        <p className={styles.state}>
          <strong>{words.states[state]}</strong>
          <br />
          {fill(words.statesHelp[state], { who, because: because ?? '' })}
        </p>
        {children}
      </div>
      <details>
        <summary>{words.text}</summary>
        <pre className={styles.text}>{text}</pre>
      </details>
      <ul className={`bare ${styles.actions}`}>
        {links}
        {of.state === 'refused' && (
          <li>
            <button type="button" onClick={() => void sendRefused(id)}>
              {words.sendAgain}
            </button>
          </li>
        )}
        <li>
          <button type="button" onClick={() => saveText(title, `${shown(said.current)}\n\n${text}\n`)}>
            {words.copy}
          </button>
        </li>
        {of.state === 'refused' && (
          <li>
            <button type="button" data-weight="quiet" onClick={() => confirm(words.dropSure) && void drop(id)}>
              {words.drop}
            </button>
          </li>
        )}
      </ul>
    </li>
  )
}

/** Line by line as it is laid out, not run together. */
function shown(part: HTMLElement | null): string {
  // biome-ignore lint/performance/useDomNodeTextContent: the text of the document has no lines
  return part?.innerText ?? ''
}
