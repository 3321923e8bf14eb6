import { useMemo, useState } from 'react'
import { Link } from 'wouter'
import { owedRisks } from '#content/follow-up/owed-risks.ts'
import { owedScreen as words } from '#content/wording/app-lists.ts'
import { wardInEnglish } from '#content/wording/app-ward.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { isWardRound } from '#core/owed/owed-code-of.ts'
import { ownership, riskOf, sortOwed } from '#core/owed/sort.ts'
import { standingOf } from '#core/owed/standing.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { ListGroup } from '../../design/list-group.tsx'
import { ListsBehind } from '../../design/lists-behind.tsx'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { lists, useFiguresOwed, useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import { useDraft } from '../../journal/drafts.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { usePeople } from '../../session/use-people.ts'
import { useWho } from '../../session/use-who.ts'
import { OwedLine, type OwedShown } from './owed-line.tsx'
import styles from './screen.module.css'

type Row = Lists['owed'][number]
const ward = wardInEnglish.fromOwed
const bands = ['first', 'late', 'now', 'later'] as const
type Band = (typeof bands)[number]
type Whose = 'mine' | 'everyone'
const shownAtOnce = 60

/** The home page: everything that is owed. */
export function OwedScreen() {
  const reading = useLists()
  const figures = useFiguresOwed()
  const ofHouse = figures.kind === 'read' ? figures.value.owed : []
  const { me, pen, clinic } = useWho()
  const now = useMinute()
  // Each person's own choice stands until they change it; until then nobody's work is hidden.
  const { draft: whose, change: setWhose } = useDraft<Whose>('owed whose', me.id, () => 'everyone')
  return (
    <Page title={words.title} lead={words.lead}>
      <ReadingView reading={reading} again={() => void lists.refresh()}>
        {({ owed, cases, remaking, asOf }) =>
          cases.length === 0 && owed.length === 0 ? (
            <Nothing />
          ) : (
            <>
              <p className={styles.printed}>
                {fill(words.printed, {
                  clinic: clinic.row.name,
                  whose: fill(words.printedWhose[whose], { name: me.name }),
                  when: sayWhen(asOf, pen.zone),
                  now: sayWhen(now, pen.zone),
                })}
              </p>
              <ListsBehind remaking={remaking} />
              <fieldset className={styles.whose}>
                <legend className="said">{words.show}</legend>
                {(['everyone', 'mine'] as const).map((one) => (
                  <label key={one} className={styles.choice}>
                    <input type="radio" name="whose" checked={whose === one} onChange={() => setWhose(one)} />
                    <span>{words[one]}</span>
                  </label>
                ))}
              </fieldset>
              <InWard rows={owed} />
              <OwedBands rows={[...owed.filter(({ id }) => !isWardRound(id)), ...ofHouse]} mine={whose === 'mine'} />
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
        <Link href="/new" data-weight="main">
          {words.newReferral}
        </Link>
      </p>
    </div>
  )
}

/** The rounds of the ward are many and short: here stands how they are, and the way to their own list. */
function InWard({ rows }: { readonly rows: readonly Row[] }) {
  const now = useMinute()
  const rounds = rows.filter(({ id }) => isWardRound(id))
  if (rounds.length === 0) return null
  const count = (kind: 'late' | 'now') => String(rounds.filter((row) => standingOf(row, now).kind === kind).length)
  const animals = new Set(rounds.map(({ stream }) => stream)).size
  return (
    <ListGroup id="owed-ward" title={ward.title} beside={rounds.length}>
      <p>
        {fill(ward.said, { animals: sayCount(wardInEnglish.animals, animals), late: count('late'), now: count('now') })}{' '}
        <Link href="/ward">{ward.open}</Link>
      </p>
    </ListGroup>
  )
}

/** Nothing to do is an answer too, with the two ways on. */
function NothingOwed({ mine }: { readonly mine: boolean }) {
  return (
    <div className="stack">
      <p role="status">{mine ? words.noneMine : words.none}</p>
      {!mine && (
        <p className="row">
          <Link href="/find" data-weight="side">
            {words.find}
          </Link>
          <Link href="/new" data-weight="side">
            {words.newReferral}
          </Link>
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

function OwedBand(props: OwedShown & { readonly band: Band; readonly rows: readonly Row[] }) {
  const { band, rows, now, staff } = props
  const [shown, setShown] = useState(shownAtOnce)
  return (
    <ListGroup id={`owed-${band}`} title={words[band]} beside={rows.length} quiet={band === 'later'}>
      {band === 'first' && <p className="soft">{words.firstHelp}</p>}
      <ul className="bare">
        {rows.slice(0, shown).map((row) => (
          <OwedLine key={`${row.stream} ${row.id}`} row={row} now={now} staff={staff} quiet={band === 'later'} />
        ))}
      </ul>
      {rows.length > shown && (
        <p>
          <span className={styles.printed}>{fill(words.notPrinted, { count: String(rows.length - shown) })}</span>
          <button type="button" onClick={() => setShown(shown + shownAtOnce * 5)}>
            {fill(words.more, { count: String(Math.min(rows.length - shown, shownAtOnce * 5)) })}
          </button>
        </p>
      )}
    </ListGroup>
  )
}
