import { useMemo, useState } from 'react'
import { Link } from 'wouter'
import { owedRisks } from '#content/follow-up/owed-risks.ts'
import { owedScreen as words } from '#content/wording/app-lists.ts'
import { owedOrderInEnglish } from '#content/wording/app-owed.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { deputyOf, ownership, riskOf, sortOwed } from '#core/owed/sort.ts'
import { type Standing, standingOf } from '#core/owed/standing.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { ListGroup } from '../../design/list-group.tsx'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayDay } from '../../design/say-when.ts'
import { lists, useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import { caseHref } from '../../journal/hrefs.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { usePeople } from '../../session/use-people.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './screen.module.css'

type Row = Lists['owed'][number]
const bands = ['first', 'late', 'now', 'later'] as const
type Band = (typeof bands)[number]
const shownAtOnce = 60

/** The home page: everything that is owed. */
export function OwedScreen() {
  const reading = useLists()
  const [whose, setWhose] = useState<'mine' | 'everyone'>('everyone')
  return (
    <Page title={words.title} lead={words.lead}>
      <ReadingView reading={reading} again={() => void lists.refresh()}>
        {({ owed, cases }) =>
          cases.length === 0 && owed.length === 0 ? (
            <Nothing />
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
              <OwedBands rows={owed} mine={whose === 'mine'} />
            </>
          )
        }
      </ReadingView>
    </Page>
  )
}

function Nothing() {
  return (
    <div className="stack">
      <p>{words.noneAtAll}</p>
      <p>
        <Link href="/new">{words.newReferral}</Link>
      </p>
    </div>
  )
}

/** Nothing to do is an answer too, with the two ways on. */
function NothingOwed({ mine }: { readonly mine: boolean }) {
  return (
    <div className="stack">
      <p role="status">{mine ? words.noneMine : words.none}</p>
      {!mine && (
        <p className="row">
          <Link href="/find">{words.find}</Link>
          <Link href="/new">{words.newReferral}</Link>
        </p>
      )}
    </div>
  )
}

function OwedBands({ rows, mine }: { readonly rows: readonly Row[]; readonly mine: boolean }) {
  const now = useMinute()
  const { me, pen } = useWho()
  const staff = usePeople()
  const { people, leaves } = staff
  const wanted = useMemo(() => {
    const isMine = (row: Row) => ownership(row, me, people, leaves, dayOf({ at: now, zone: pen.zone })).kind === 'mine'
    return sortOwed(mine ? rows.filter(isMine) : rows, now, owedRisks)
  }, [rows, mine, me, people, leaves, now, pen.zone])
  if (wanted.length === 0) return <NothingOwed mine={mine} />
  return bands.map((band) => {
    const group = wanted.filter((row) => bandOf(row, now) === band)
    return group.length === 0 ? null : <OwedBand key={band} band={band} rows={group} now={now} staff={staff} />
  })
}

/** What harms while it waits stands before everything that is merely late. */
function bandOf(row: Row, now: string): Band {
  const { kind } = standingOf(row, now)
  return kind !== 'later' && riskOf(row.id, owedRisks).class === 'harm' ? 'first' : kind
}

type Shown = { readonly now: string; readonly staff: ReturnType<typeof usePeople> }

function OwedBand(props: Shown & { readonly band: Band; readonly rows: readonly Row[] }) {
  const { band, rows, now, staff } = props
  const [shown, setShown] = useState(shownAtOnce)
  return (
    <ListGroup id={`owed-${band}`} title={words[band]} beside={rows.length} quiet={band === 'later'}>
      {band === 'first' && <p className="soft">{words.firstHelp}</p>}
      <ul className="bare">
        {rows.slice(0, shown).map((row) => (
          <OwedLine key={`${row.stream} ${row.id}`} row={row} now={now} staff={staff} />
        ))}
      </ul>
      {rows.length > shown && (
        <p>
          <button type="button" onClick={() => setShown(shown + shownAtOnce * 5)}>
            {fill(words.more, { count: String(Math.min(rows.length - shown, shownAtOnce * 5)) })}
          </button>
        </p>
      )}
    </ListGroup>
  )
}

function OwedLine({ row, now, staff }: Shown & { readonly row: Row }) {
  const { me, pen } = useWho()
  const { people, leaves, nameOf } = staff
  const roles: Readonly<Record<string, string>> = shell.roles
  const day = dayOf({ at: now, zone: pen.zone })
  const mine = ownership(row, me, people, leaves, day)
  const deputy = mine.kind === 'mine' ? null : deputyOf(row, people, leaves, day)
  const { class: risk } = riskOf(row.id, owedRisks)
  return (
    <li className={styles.line}>
      <div>
        <p className={styles.what}>
          <Link href={`${caseHref(row.stream)}?owed=${encodeURIComponent(row.id)}`}>{row.what}</Link>
        </p>
        <p className={styles.about}>
          {row.name !== '' && (
            <Link href={caseHref(row.stream)} className={styles.animal}>
              {row.name}
            </Link>
          )}
          <span>{roles[row.who] ?? nameOf(row.who)}</span>
          {mine.kind === 'mine' && mine.because === 'as-deputy' && (
            <span>{fill(owedOrderInEnglish.mine['as-deputy'], { name: nameOf(mine.of) })}</span>
          )}
          {deputy !== null && <span>{fill(owedOrderInEnglish.deputy, { name: nameOf(deputy) })}</span>}
          <span>{sayStanding(standingOf(row, now), row, pen.zone)}</span>
        </p>
      </div>
      <details className={styles.why}>
        <summary>{words.why}</summary>
        <p>{row.why}</p>
        <p className="soft">{owedOrderInEnglish.risks[risk]}</p>
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
  return days === 0 ? words.days.today : sayCount(words.days, days)
}
