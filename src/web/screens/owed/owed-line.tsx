import { useId } from 'react'
import { Link } from 'wouter'
import { owedRisks } from '#content/follow-up/owed-risks.ts'
import { owedScreen as words } from '#content/wording/app-lists.ts'
import { owedOrderInEnglish } from '#content/wording/app-owed.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { deputyOf, ownership, riskOf } from '#core/owed/sort.ts'
import { type Standing, standingOf } from '#core/owed/standing.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayNearInstant } from '../../design/say-near-day.ts'
import { WithSides } from '../../design/with-sides.tsx'
import type { Lists } from '../../journal/database.ts'
import { owedHref } from '../../journal/hrefs.ts'
import type { usePeople } from '../../session/use-people.ts'
import { useWho } from '../../session/use-who.ts'
import styles from './owed-line.module.css'
import { wayToSettle } from './way-to-settle.ts'

type Row = Lists['owed'][number]
export type OwedShown = { readonly now: string; readonly staff: ReturnType<typeof usePeople> }

/** One owed thing: of which animal, what, why in words, by whom and until when, and the one step that settles it. */
export function OwedLine(props: OwedShown & { readonly row: Row; readonly quiet: boolean }) {
  const { row, now, staff, quiet } = props
  const { me, pen } = useWho()
  const id = useId()
  const standing = standingOf(row, now)
  const settle = wayToSettle(row, me.role)
  return (
    <li className={styles.line}>
      <div className={styles.what}>
        <Link id={id} href={owedHref(row)}>
          <WithSides text={row.what} />
        </Link>
        <p className={styles.about}>
          {row.name !== '' && <span className={styles.animal}>{row.name}</span>}
          <WhoOwes row={row} now={now} staff={staff} />
          <span className={styles.due} data-standing={standing.kind}>
            {sayStanding(standing, row, now, pen.zone)}
          </span>
        </p>
      </div>
      <div className={styles.why}>
        <p>
          <WithSides text={row.why} />
        </p>
        <WhyHere row={row} />
      </div>
      {settle && !quiet && (
        <Link href={settle.href} className={styles.settle} aria-describedby={id}>
          {words.settle[settle.how]}
        </Link>
      )}
    </li>
  )
}

function WhoOwes({ row, now, staff }: OwedShown & { readonly row: Row }) {
  const { me, pen } = useWho()
  const { people, leaves, nameOf } = staff
  const roles: Readonly<Record<string, string>> = shell.roles
  const day = dayOf({ at: now, zone: pen.zone })
  const mine = ownership(row, me, people, leaves, day)
  const deputy = mine.kind === 'mine' ? null : deputyOf(row, people, leaves, day)
  return (
    <>
      <span>{roles[row.who] ?? nameOf(row.who)}</span>
      {mine.kind === 'mine' && mine.because === 'as-deputy' && (
        <span>{fill(owedOrderInEnglish.mine['as-deputy'], { name: nameOf(mine.of) })}</span>
      )}
      {deputy !== null && <span>{fill(owedOrderInEnglish.deputy, { name: nameOf(deputy) })}</span>}
    </>
  )
}

/** Why it stands at this place of the list, and who says when it is due. */
function WhyHere({ row }: { readonly row: Row }) {
  const { class: risk } = riskOf(row.id, owedRisks)
  return (
    <details data-screen-only>
      <summary>{words.why}</summary>
      <p>{fill(words.standsHere, { risk: owedOrderInEnglish.risks[risk] })}</p>
      {row.sources.length > 0 && <p className="soft">{fill(words.sources, { list: row.sources.join(', ') })}</p>}
    </details>
  )
}

function sayStanding(standing: Standing, row: Row, now: string, zone: string): string {
  if (standing.kind === 'late') return fill(words.lateBy, { days: sayDays(standing.days) })
  if (standing.kind === 'now') return fill(words.dueBy, { day: sayNearInstant(row.dueBy, now, zone) })
  return fill(words.dueFrom, { day: sayNearInstant(row.dueFrom, now, zone) })
}

function sayDays(days: number): string {
  return days === 0 ? words.days.today : sayCount(words.days, days)
}
