import { Link, useSearchParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { owedScreen } from '#content/wording/app-lists.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { subjectOfOwed } from '#core/chapters/subjects-for.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { settledBy } from '#core/owed/owed-code-of.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { type Standing, standingOf } from '#core/owed/standing.ts'
import { sayDay, sayWhen } from '../../design/say-when.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { conflictHref, dosePlanHref, writeHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import styles from './chapter.module.css'
import { owedScreenOf } from './owed-screen.ts'
import { WhyOwed } from './why-owed.tsx'

const words = caseInEnglish.chapter

/** What is owed in this chapter, by whom and until when, with the form that settles it. */
export function NextList({ items }: { readonly items: readonly OwedItem[] }) {
  const now = useMinute()
  if (items.length === 0) return null
  return (
    <>
      <h3 className={styles.part}>{words.next}</h3>
      <ul className={styles.items}>
        {items.map((item) => (
          <NextItem key={item.id} item={item} standing={standingOf(item, now)} />
        ))}
      </ul>
    </>
  )
}

function NextItem({ item, standing }: { readonly item: OwedItem; readonly standing: Standing }) {
  const { file } = useCaseView()
  const { what, who, why } = sayOwed(item, owedInEnglish)
  const named = item.person === null ? who : (file.people.get(item.person)?.name ?? who)
  const [query] = useSearchParams()
  const wanted = query.get('owed') === item.id
  return (
    <li id={`owed-${item.id}`} data-wanted={wanted} tabIndex={-1}>
      <p className={styles.what}>{what}</p>
      <p className={styles.due} data-standing={standing.kind}>
        {named}, {sayStanding(standing, item)}
      </p>
      <p className={styles.why}>{why}</p>
      <div className={styles.acts} data-screen-only>
        <Settle item={item} what={what} />
        <WhyOwed item={item} what={what} />
      </div>
    </li>
  )
}

/** The way to what settles it: its form, or the page where a conflict is settled. */
function Settle({ item, what }: { readonly item: OwedItem; readonly what: string }) {
  const { id, file } = useCaseView()
  const kind = settledBy[item.what]
  if (item.what === 'conflict-to-settle') {
    const between = file.theCase.conflicts.find(({ between: ids }) => item.id.endsWith(ids.join('+')))?.between
    const [first] = between ?? file.theCase.conflicts[0]?.between ?? []
    if (first === undefined) return null
    return (
      <Link href={conflictHref(id, first)} className={styles.act}>
        {words.settleIt}
      </Link>
    )
  }
  if (item.what === 'second-check-of-lines' && item.operation !== null) {
    return (
      <Link href={dosePlanHref(id, item.operation)} className={styles.act}>
        {dosePlanInEnglish.open}
      </Link>
    )
  }
  if (kind === null || kind === 'house-policy') return null
  return (
    <Link
      href={
        owedScreenOf(id, item.id) ?? writeHref(id, kind, { subject: subjectOfOwed(item, kind, file), owed: item.id })
      }
      className={styles.act}
      aria-label={`${words.writeIt}: ${what}`}
    >
      {words.writeIt}
    </Link>
  )
}

function sayStanding(standing: Standing, { dueFrom, dueBy, zone, precision }: OwedItem): string {
  const say = precision === 'minute' ? sayWhen : sayDay
  if (standing.kind === 'now') return fill(words.due, { day: say(dueBy, zone) })
  if (standing.kind === 'later') return fill(words.from, { day: say(dueFrom, zone) })
  const { days } = standing
  const length = days === 0 ? owedScreen.days.today : sayCount(words.days, days)
  return fill(words.late, { days: length })
}
