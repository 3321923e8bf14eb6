import { useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { takeInResultInEnglish } from '#content/wording/app-take-in-result.ts'
import { trayInEnglish as words } from '#content/wording/app-tray.ts'
import { fill } from '#core/outcome/finding.ts'
import { ageOf, type Tray } from '#core/tray/tray.ts'
import { Attached } from '../../design/attached.tsx'
import { ListGroup } from '../../design/list-group.tsx'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { tray, useTray } from '../../journal/cases.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import { FileIt } from './file-it.tsx'
import { FiledList } from './filed-list.tsx'
import type { Arrived } from './filing.ts'
import styles from './screen.module.css'
import { TakeIn } from './take-in.tsx'
import { ThrowAway } from './with-reason.tsx'

/** What came in and belongs to nobody yet. */
export function TrayScreen() {
  const reading = useTray()
  return (
    <Page title={words.title} lead={words.lead}>
      <p>
        <Link href="/tray/result">{takeInResultInEnglish.fromTray}</Link>
      </p>
      <TakeIn />
      <ReadingView reading={reading} again={() => void tray.refresh()}>
        {({ waiting, filed }) => (
          <>
            <Waiting waiting={waiting} unsent={reading.unsent} />
            <FiledList filed={filed} />
          </>
        )}
      </ReadingView>
    </Page>
  )
}

function Waiting({ waiting, unsent }: { readonly waiting: Tray['waiting']; readonly unsent: ReadonlySet<string> }) {
  // In the address, so that the form is open again after a reload.
  const [query, setQuery] = useSearchParams()
  const filing = waiting.find(({ header }) => header.id === query.get('file'))
  const setFiling = (id: string | null) => setQuery(id === null ? {} : { file: id }, { replace: true })
  const [throwing, setThrowing] = useState<Arrived | null>(null)
  return (
    <ListGroup id="tray-waiting" title={words.waiting} beside={waiting.length}>
      {waiting.length === 0 && <p>{words.none}</p>}
      <ul className="bare">
        {waiting.map((one) => (
          <ArrivedLine
            key={one.header.id}
            arrived={one}
            unsent={unsent.has(one.header.id)}
            onFile={() => setFiling(one.header.id)}
            onThrow={() => setThrowing(one)}
          />
        ))}
      </ul>
      {filing && <FileIt key={filing.header.id} arrived={filing} onClose={() => setFiling(null)} />}
      {throwing && <ThrowAway arrived={throwing} onClose={() => setThrowing(null)} />}
    </ListGroup>
  )
}

function ArrivedLine(props: {
  readonly arrived: Arrived
  readonly unsent: boolean
  readonly onFile: () => void
  readonly onThrow: () => void
}) {
  const { arrived, unsent, onFile, onThrow } = props
  const { header, body, at } = arrived
  const { people, pen } = useWho()
  const now = useMinute()
  const { author } = header
  const by = author.kind === 'person' ? (people.find(({ id }) => id === author.person)?.name ?? author.person) : ''
  return (
    <li className={styles.line}>
      <div className={styles.pages}>
        {header.attachments.map((file) => (
          <Attached key={file.hash} file={file} />
        ))}
      </div>
      <div className={styles.about}>
        <p className={styles.what}>{words.seems[body.seems]}</p>
        <p>
          {body.from === null ? words.noFrom : fill(words.from, { from: body.from })}, {words.came[body.came]}
        </p>
        {body.says !== null && <p>{fill(words.says, { text: body.says })}</p>}
        <p className="soft">
          <strong>{sayAge(at, now)}</strong>, {fill(words.since, { when: sayWhen(at, pen.zone) })},{' '}
          {fill(words.by, { name: by })}
          {unsent && `, ${words.unsent}`}
        </p>
      </div>
      <div className={styles.actions}>
        {header.attachments.some(({ mediaType }) => mediaType.startsWith('text/')) && (
          <Link href={`/tray/result?from=${header.id}`}>{takeInResultInEnglish.readIt}</Link>
        )}
        <button type="button" onClick={onFile}>
          {words.file}
          <span className="said"> {words.seems[body.seems]}</span>
        </button>
        <button type="button" data-weight="quiet" onClick={onThrow}>
          {words.away}
          <span className="said"> {words.seems[body.seems]}</span>
        </button>
      </div>
    </li>
  )
}

function sayAge(since: string, now: string): string {
  const { days, hours } = ageOf(since, now)
  if (days > 0) return days === 1 ? words.age.day : fill(words.age.days, { count: String(days) })
  if (hours === 0) return words.age.hours
  return hours === 1 ? words.age.hour : fill(words.age.manyHours, { count: String(hours) })
}
