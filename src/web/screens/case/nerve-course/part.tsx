import { Suspense } from 'react'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { shellInEnglish } from '#content/wording/app-shell.ts'
import { nerveCourseInEnglish, nerveScreen as words } from '#content/wording/nerve-course.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { type NerveCourse, nerveCoursesOf, nextLookOf } from '#core/nerve-course/nerve-course.ts'
import { sayCourse } from '#core/nerve-course/say-course.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { isLate, type OwedItem } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { lazyPart } from '../../../ahead.tsx'
import { Provenance } from '../../../design/provenance.tsx'
import { sayDay, sayWhen } from '../../../design/say-when.ts'
import { SideWord } from '../../../design/side-word.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { useCaseView } from '../case-view.ts'
import styles from '../panels.module.css'
import { LooksTable } from './looks-table.tsx'

/** With the plate it asks for the theme of a browser, and comes with it. */
const CourseDrawing = lazyPart(async () => ({ default: (await import('./drawing.tsx')).CourseDrawing }))

const rules = { ...owedRules, counting: ownCounting }

/** Face, Horner's, balance and eye of every operated ear: sentences, then the looks as a line and as a table. */
export function NerveCourses() {
  const { file } = useCaseView()
  const courses = nerveCoursesOf(file, rules)
  if (courses.length === 0) return null
  return (
    <section id="nerve-course" className={styles.panel} aria-labelledby="nerve-course-title" tabIndex={-1}>
      <h3 id="nerve-course-title">{words.title}</h3>
      {courses.map((course) => (
        <EarCourse key={course.operation.id} course={course} />
      ))}
    </section>
  )
}

/** One ear by itself, as it also stands beside a second side. */
export function EarCourse({
  course,
  place = 'nerve-course',
}: {
  readonly course: NerveCourse
  readonly place?: string
}) {
  const { file, owed } = useCaseView()
  const said = sayCourse(course, file, nerveCourseInEnglish)
  const next = nextLookOf(course, owed)
  const [before, after] = words.ear.split('{side}')
  const heading = `${place}-${course.operation.id}`
  return (
    <div className={styles.panel}>
      <h4 id={heading}>
        {before}
        <SideWord side={course.operation.side} />
        {fill(after ?? '', { date: sayCalendarDay(course.day) })}
      </h4>
      <p>{said.before}</p>
      <ul>
        {said.signs.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {said.ended === null ? <Next item={next} /> : <p>{said.ended}</p>}
      <Suspense fallback={<p role="status">{shellInEnglish.loading}</p>}>
        <CourseDrawing course={course} />
      </Suspense>
      <LooksTable course={course} />
      <p className="soft">
        {said.rule} <Provenance fact={course.rule.days} />
      </p>
    </div>
  )
}

/** The next look, from what is owed. */
function Next({ item }: { readonly item: OwedItem | null }) {
  const now = useMinute()
  if (!item) return <p className="soft">{words.none}</p>
  const say = item.precision === 'minute' ? sayWhen : sayDay
  const [from, until] = [say(item.dueFrom, item.zone), say(item.dueBy, item.zone)]
  const about = { what: sayOwed(item, owedInEnglish).what, from, until }
  const said = isLate(item, now) ? words.late : from === until || item.dueFrom <= now ? words.nextBy : words.next
  return (
    <p>
      <a href={`?owed=${item.id}#owed-${item.id}`}>{capital(fill(said, about))}</a>
    </p>
  )
}
