import { Link } from 'wouter'
import { homeNowInEnglish as words } from '#content/wording/app-home-now.ts'
import { homeInEnglish } from '#content/wording/home.ts'
import { type HomeCourse, type HomeEdition, homeEditionsOf, homePlanOf } from '#core/home/home-plan.ts'
import { daysApart, medicineTimes, stretchesOf, tabletsNeeded } from '#core/home/medicine-times.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Decimal } from '#core/units/quantity.ts'
import { sayAmount } from '#documents/home-page/medicines.ts'
import { Notice } from '../../design/notice.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import { writeHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { HomeChecks } from './home-checks.tsx'
import styles from './panels.module.css'

/** What the animal swallows at home now, with what changed since it went home and the page that no longer counts. */
export function HomeNow() {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const now = useMinute()
  const plan = homePlanOf(file.theCase)
  if (!plan || file.theCase.latest('death')) return null
  const { zone } = file.clinic
  const isRunning = (course: HomeCourse) =>
    (course.untilSaid && course.until === null) || (medicineTimes(course, zone).lastDose?.at ?? '') >= now
  // A dose that is brought down in steps has a line for each step that is not over.
  const running = plan.courses.flatMap(stretchesOf).filter(isRunning)
  const over = plan.courses.filter((course) => !isRunning(course))
  const mayChange = writersOf('medicine-change').includes(me.role)
  return (
    <section className={styles.panel} aria-labelledby="home-now">
      <h3 id="home-now">{words.title}</h3>
      <PageReplaced />
      <HomeChecks />
      {plan.unmatched.map(({ stop, change }) => (
        <Notice key={`${change.header.id} ${stop.label}`} tone="warn">
          <p>{fill(words.unmatched, { medicine: stop.label })}</p>
        </Notice>
      ))}
      {running.length === 0 ? (
        <p className="soft">{words.none}</p>
      ) : (
        <ul>
          {running.map((course) => (
            <li key={keyOf(course)}>{sayCourse(course, zone, now)}</li>
          ))}
        </ul>
      )}
      {over.length > 0 && (
        <details className={styles.opener}>
          <summary>{words.over}</summary>
          <ul>
            {over.map((course) => (
              <li key={keyOf(course)}>{sayOver(course, zone)}</li>
            ))}
          </ul>
        </details>
      )}
      {mayChange && (
        <p data-screen-only>
          <Link href={writeHref(id, 'medicine-change', { subject: { kind: 'animal', animal: '' } })}>
            {words.change}
          </Link>
        </p>
      )}
    </section>
  )
}

function keyOf({ entry, drug, side, label, firstDay }: HomeCourse): string {
  return [entry, drug, side, label, firstDay].join(' ')
}

/** Which page counts, and since when: said wherever somebody may still hold an older one. */
function PageReplaced() {
  const { file } = useCaseView()
  const editions = homeEditionsOf(file.theCase)
  const last = editions.at(-1)
  if (editions.length < 2 || !last) return null
  return (
    <Notice tone="warn">
      <p>
        <strong>{words.replacedWord}.</strong>{' '}
        {fill(words.replaced, {
          number: String(editions.length),
          what: words.made[madeBy(last)],
          when: sayMoment(last.line.header.happenedAt),
        })}
      </p>
    </Notice>
  )
}

function madeBy({ line }: HomeEdition): keyof typeof words.made {
  const { kind } = line.header
  return kind === 'medicine-change' || kind === 'withdrawal' ? kind : 'discharge'
}

function sayCourse(course: HomeCourse, zone: string, now: string): string {
  const { doses } = medicineTimes(course, zone)
  const [first] = doses
  const last = doses.at(-1)
  const times = [...new Set(course.times)].sort().join(', ')
  const about = {
    medicine: course.label,
    each: sayAmount(new Decimal(course.each), course.form, homeInEnglish),
    times: daysApart(course) === 2 ? fill(words.everySecondDay, { times }) : times,
    first: first ? sayWhen(first.at, zone) : '',
    last: last ? sayWhen(last.at, zone) : '',
    total: sayAmount(tabletsNeeded(course, zone).total, course.form, homeInEnglish),
  }
  if (course.untilSaid) return fill(words.untilSaid, about)
  return fill(first && first.at > now ? words.begins : words.line, about)
}

function sayOver(course: HomeCourse, zone: string): string {
  const last = medicineTimes(course, zone).lastDose
  const about = { medicine: course.label, last: last ? sayWhen(last.at, zone) : '' }
  if (course.until === null) return fill(words.ended, about)
  if (last === null) return fill(words.neverBegun, about)
  return fill(words.stopped, { ...about, day: sayStoredDay(course.until.day), time: course.until.time })
}
