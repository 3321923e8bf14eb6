import { useState } from 'react'
import { Link } from 'wouter'
import { owedScreen as words } from '#content/wording/app-lists.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Standing, standingOf } from '#core/owed/standing.ts'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayDay } from '../../design/say-when.ts'
import { lists, useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import { caseHref } from '../../journal/hrefs.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './screen.module.css'

type Row = Lists['owed'][number]
const standings = ['late', 'now', 'later'] as const

/** The home page: everything that is owed. */
export function OwedScreen() {
  const reading = useLists()
  const { me } = useWho()
  const [whose, setWhose] = useState<'mine' | 'everyone'>('everyone')
  const isMine = (row: Row) => row.who === me.id || row.who === me.role
  return (
    <Page title={words.title} lead={words.lead}>
      <ReadingView reading={reading} again={() => void lists.refresh()}>
        {({ owed, cases }) =>
          cases.length === 0 ? (
            <Nothing said={words.noneAtAll} />
          ) : (
            <>
              <fieldset className={styles.whose}>
                <legend className="said">{words.show}</legend>
                {(['everyone', 'mine'] as const).map((one) => (
                  <label key={one} className={styles.choice}>
                    <input type="radio" name="whose" checked={whose === one} onChange={() => setWhose(one)} />
                    <span>{words[one]}</span>
                  </label>
                ))}
              </fieldset>
              <OwedLists rows={whose === 'mine' ? owed.filter(isMine) : owed} mine={whose === 'mine'} />
            </>
          )
        }
      </ReadingView>
    </Page>
  )
}

function Nothing({ said }: { readonly said: string }) {
  return (
    <div className="stack">
      <p>{said}</p>
      <p>
        <Link href="/new">{words.newReferral}</Link>
      </p>
    </div>
  )
}

function OwedLists({ rows, mine }: { readonly rows: readonly Row[]; readonly mine: boolean }) {
  const now = useMinute()
  if (rows.length === 0) return <p role="status">{mine ? words.noneMine : words.none}</p>
  return (
    <>
      {standings.map((standing) => {
        const group = rows.filter((row) => standingOf(row, now).kind === standing)
        if (group.length === 0) return null
        return (
          <section key={standing} aria-labelledby={`owed-${standing}`} className={styles.group}>
            <h2 id={`owed-${standing}`} className={styles.standing} data-standing={standing}>
              {words[standing]}
              <span className={styles.count}>{group.length}</span>
            </h2>
            <ul className="bare">
              {[...group]
                .sort((a, b) => (a.dueBy < b.dueBy ? -1 : a.dueBy > b.dueBy ? 1 : 0))
                .map((row) => (
                  <OwedLine key={`${row.stream} ${row.id}`} row={row} standing={standingOf(row, now)} />
                ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

function OwedLine({ row, standing }: { readonly row: Row; readonly standing: Standing }) {
  const { pen, people } = useWho()
  const roles: Readonly<Record<string, string>> = shell.roles
  const who = people.find(({ id }) => id === row.who)?.name ?? roles[row.who] ?? row.who
  return (
    <li className={styles.line}>
      <div className={styles.main}>
        <p className={styles.what}>
          <Link href={`${caseHref(row.stream)}?owed=${encodeURIComponent(row.id)}`}>{row.what}</Link>
        </p>
        <p className={styles.about}>
          <Link href={caseHref(row.stream)} className={styles.animal}>
            {row.name}
          </Link>
          <span>{who}</span>
          <span>{sayStanding(standing, row, pen.zone)}</span>
        </p>
      </div>
      <details className={styles.why}>
        <summary>{words.why}</summary>
        <p>{row.why}</p>
        {row.sources.length > 0 && <p className="soft">{fill(words.sources, { list: row.sources.join(', ') })}</p>}
      </details>
    </li>
  )
}

function sayStanding(standing: Standing, row: Row, zone: string): string {
  if (standing.kind === 'late') return fill(words.lateBy, { days: sayDays(standing.days) })
  if (standing.kind === 'now') return fill(words.dueBy, { day: sayDay(row.dueBy, zone) })
  return fill(words.dueFrom, { day: sayDay(row.dueFrom, zone) })
}

function sayDays(days: number): string {
  if (days === 0) return words.days.today
  return days === 1 ? words.days.one : fill(words.days.many, { count: String(days) })
}
