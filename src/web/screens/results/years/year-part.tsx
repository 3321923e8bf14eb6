import { Link } from 'wouter'
import type { YearsAnswer } from '#actions/yearly/read-years.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { yearsInEnglish as words } from '#content/wording/app-years.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { writersOf } from '#core/people/may-write.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { ColumnHeads } from '../../../design/column-heads.tsx'
import { ScrollBox } from '../../../design/scroll-box.tsx'
import { useWho } from '../../../session/use-who.ts'
import { Freeze } from './freeze.tsx'
import { FrozenPart } from './frozen-part.tsx'
import { useNames } from './use-names.ts'
import type { Year } from './year-answer.ts'
import styles from './years.module.css'

/** One year: frozen with its files and errata, or how much of it is known and whom to call before it is frozen. */
export function YearPart({ year, answer }: { readonly year: Year; readonly answer: YearsAnswer }) {
  const { me } = useWho()
  const id = `year-${year.year}`
  const may = writersOf('report-frozen').includes(me.role)
  return (
    <section aria-labelledby={id} className={`stack ${styles.year}`}>
      <h2 id={id}>{fill(words.year, { year: String(year.year) })}</h2>
      {year.frozen ? (
        <FrozenPart frozen={year.frozen} answer={answer} may={may} />
      ) : (
        <>
          <p>{year.over ? words.notFrozen : fill(words.open, { next: String(year.year + 1) })}</p>
          <Known year={year} />
          <ToCall year={year} />
          {year.over && (may ? <Freeze year={year} today={answer.today} /> : <p className="soft">{words.mayNot}</p>)}
        </>
      )}
    </section>
  )
}

function Known({ year: { operations } }: { readonly year: Year }) {
  return (
    <ScrollBox label={words.known}>
      <table className={`${styles.table} ${styles.known}`}>
        <caption className="said">{words.known}</caption>
        <ColumnHeads of={Object.values(words.columns)} />
        <tbody>
          {operations.map((one) => (
            <tr key={`${one.species} ${one.procedure}`}>
              <th scope="row">
                {fill(words.operation, {
                  animals: words.animals[one.species],
                  procedure: namesInEnglish.procedures[one.procedure],
                })}
              </th>
              <td data-head={words.columns.ears}>{one.ears}</td>
              <td data-head={words.columns.heard}>{one.heardOf}</td>
              <td data-head={words.columns.known}>{one.knownAfterYear}</td>
              <td data-head={words.columns.lost}>{one.lostAfterYear}</td>
              <td data-head={words.columns.notYet}>{one.notYetDue}</td>
              <td data-head={words.columns.died}>{one.died}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  )
}

/** More than these are behind one touch. */
const saidAtOnce = 10

function ToCall({ year: { toCall } }: { readonly year: Year }) {
  if (toCall.length === 0) return <p>{words.calls.none}</p>
  return (
    <>
      <p>{sayCount(words.calls, toCall.length)}</p>
      <Calls some={toCall.slice(0, saidAtOnce)} />
      {toCall.length > saidAtOnce && (
        <details>
          <summary>{fill(words.calls.more, { count: String(toCall.length) })}</summary>
          <Calls some={toCall.slice(saidAtOnce)} from={saidAtOnce + 1} />
        </details>
      )}
    </>
  )
}

function Calls({ some, from = 1 }: { readonly some: Year['toCall']; readonly from?: number }) {
  const nameOf = useNames()
  return (
    <ol className={styles.calls} start={from}>
      {some.map(({ stream, side, on, heard }) => (
        <li key={`${stream} ${side} ${on}`}>
          <Link href={`/case/${stream.replace(/^case:/, '')}`}>
            {fill(heard === null ? words.calls.never : words.calls.line, {
              name: nameOf(stream),
              side,
              on: sayCalendarDay(on),
              heard: heard === null ? '' : sayCalendarDay(heard),
            })}
          </Link>
        </li>
      ))}
    </ol>
  )
}
