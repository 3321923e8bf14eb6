import { Link } from 'wouter'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { secondSideFacts } from '#content/follow-up/second-side.ts'
import { nerveCourseInEnglish } from '#content/wording/nerve-course.ts'
import { secondSideInEnglish as words } from '#content/wording/second-side.ts'
import { type NerveCourse, nerveCoursesOf } from '#core/nerve-course/nerve-course.ts'
import { sayReading } from '#core/nerve-course/say-course.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { firstFaceOf } from '#core/second-side/first-face.ts'
import { needsOf, type SecondSideNeed } from '#core/second-side/needs.ts'
import { type SecondSide, secondSideAhead } from '#core/second-side/second-side.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { Notice } from '../../../design/notice.tsx'
import { Provenance } from '../../../design/provenance.tsx'
import { sayDay } from '../../../design/say-when.ts'
import { agreementHref, dosePlanHref, entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { EarCourse } from '../nerve-course/part.tsx'
import styles from './second-side.module.css'

/** What is asked anew for an ear that is operated after the other one, beside how the first side went. */
export function SecondSidePart() {
  const { file } = useCaseView()
  const ahead = secondSideAhead(file.theCase)
  if (!ahead || file.theCase.latest('death')) return null
  const { second, operation } = ahead
  const course = nerveCoursesOf(file, { ...owedRules, counting: ownCounting }).find(
    (one) => one.operation.id === second.first.id,
  )
  const date = sayCalendarDay(dayOf({ at: second.first.moment.at, zone: file.clinic.zone }))
  const about = { side: second.side, first: second.first.side, date }
  return (
    <section id="second-side" aria-labelledby="second-side-title" className={styles.part} tabIndex={-1}>
      <h2 id="second-side-title">{fill(words.title, about)}</h2>
      <p>
        {fill(words.lead, about)} <Decided second={second} />
      </p>
      {course && <Face course={course} />}
      <div className={styles.beside}>
        <Needs second={second} operation={operation} />
        {course && (
          <div className={styles.first}>
            <h3>{words.firstTitle}</h3>
            <EarCourse course={course} place="first-side" />
          </div>
        )}
      </div>
    </section>
  )
}

function Decided({ second: { decided } }: { readonly second: SecondSide }) {
  const { file, id } = useCaseView()
  if (decided?.header.kind !== 'choice') return words.notDecided
  const date = sayDay(decided.at, file.clinic.zone)
  return <Link href={entryHref(id, decided.header.id)}>{fill(words.decided, { date })}</Link>
}

/** Two eyes that do not close: said plainly where the first does not, or where nobody knows. */
function Face({ course }: { readonly course: NerveCourse }) {
  const face = firstFaceOf(course)
  const first = course.operation.side
  const { twoFaces } = secondSideFacts
  if (face.kind === 'not-known') {
    return <FaceNotice said={fill(words.face['not-known'], { first })} fact={twoFaces} />
  }
  const { look, reading } = face.point
  const said = fill(words.face[face.kind], {
    first,
    found: sayReading('blink', reading, nerveCourseInEnglish),
    date: sayCalendarDay(look.on),
    day: String(look.day),
    source: nerveCourseInEnglish.sources[look.source],
  })
  return face.kind === 'normal' ? <p>{said}</p> : <FaceNotice said={said} fact={twoFaces} />
}

function FaceNotice({ said, fact }: { readonly said: string; readonly fact: typeof secondSideFacts.twoFaces }) {
  return (
    <Notice tone="warn">
      <p>
        <strong>{said}</strong> {fact.value}
      </p>
      <Provenance fact={fact} />
    </Notice>
  )
}

function Needs({ second, operation }: { readonly second: SecondSide; readonly operation: OperationOnFile | null }) {
  const { file } = useCaseView()
  const needs = needsOf(second, operation, file, owedRules.before.weightNotOlderThan.value)
  const open = needs.filter(({ state }) => state !== 'new').length
  return (
    <div>
      <p>
        <strong>{open === 0 ? words.whole : sayCount(words.open, open)}</strong>
      </p>
      <ul className={styles.needs}>
        {needs.map((need) => (
          <Need key={need.name} need={need} second={second} operation={operation} />
        ))}
      </ul>
    </div>
  )
}

function Need(props: {
  readonly need: SecondSideNeed
  readonly second: SecondSide
  readonly operation: OperationOnFile | null
}) {
  const { need, second, operation } = props
  const { name, state, line } = need
  const { file, id } = useCaseView()
  const said = fill(words.states[state], { date: line ? sayDay(line.at, file.clinic.zone) : '' })
  return (
    <li data-state={state}>
      <span className={styles.name}>{words.names[name]}</span>
      <span className={styles.state}>
        {line ? <a href={entryHref(id, line.header.id)}>{said}</a> : said}
        {name === 'imaging' && state === 'old' && (
          <>
            {' '}
            {secondSideFacts.imaging.value} <Provenance fact={secondSideFacts.imaging} />
          </>
        )}
      </span>
      {state !== 'new' && <Way need={need} second={second} operation={operation} />}
    </li>
  )
}

/** Where it is written: the page that belongs to it, else its form; what is older is never carried into it. */
function Way(props: {
  readonly need: SecondSideNeed
  readonly second: SecondSide
  readonly operation: OperationOnFile | null
}) {
  const { need, second, operation } = props
  const { name, kind } = need
  const { id } = useCaseView()
  if (name === 'planned-lines') {
    return operation && <Act href={dosePlanHref(id, operation.id)} said={words.toPlan} what={words.names[name]} />
  }
  if (name === 'consent' || (name === 'estimate' && need.state === 'unanswered')) {
    return <Act href={agreementHref(id)} said={words.toAgreement} what={words.names[name]} />
  }
  const subject = name === 'choice' ? ({ kind: 'ear', animal: '', side: second.side } as const) : null
  return <Act href={writeHref(id, kind, { subject })} said={words.write} what={words.names[name]} />
}

function Act({ href, said, what }: { readonly href: string; readonly said: string; readonly what: string }) {
  return (
    <Link href={href} aria-label={`${said}: ${what}`} className={styles.act} data-screen-only>
      {said}
    </Link>
  )
}
