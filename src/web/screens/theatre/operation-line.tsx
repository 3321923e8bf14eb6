import { Link } from 'wouter'
import type { ListedOperation } from '#actions/theatre/theatre-line.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { signOutInEnglish } from '#content/wording/app-sign-out.ts'
import { theatreListInEnglish as words } from '#content/wording/app-theatre-list.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { clockOf } from '#core/time/moment.ts'
import { sayDay, sayWhen } from '../../design/say-when.ts'
import { SideWord } from '../../design/side-word.tsx'
import { WithSides } from '../../design/with-sides.tsx'
import { caseHref } from '../../journal/hrefs.ts'
import { useWho } from '../../session/use-who.ts'
import { roomHref, settleHref } from '../case/case-hrefs.ts'
import styles from './screen.module.css'

const procedures: Readonly<Record<string, string>> = namesInEnglish.procedures

/** Who, which ear, what, by whom; what is missing; when it eats last and comes in; what it weighed. */
export function OperationLine({ line, day }: { readonly line: ListedOperation; readonly day: string }) {
  const { pen } = useWho()
  const name = line.name ?? words.noName
  const { anaesthetist } = line
  return (
    <li className={styles.line}>
      <div className={styles.who}>
        <p className={styles.time}>{isTimed(line) ? clockOn(line.at, pen.zone, day) : words.noTime}</p>
        <div>
          <h3>
            <Link href={caseHref(line.stream)} className={styles.name}>
              {name}
            </Link>{' '}
            {line.species !== null && (
              <span className={styles.species}>{words[line.species === 'cat' ? 'cat' : 'dog']}</span>
            )}
          </h3>
          <p className={styles.operation}>
            <span className={styles.side}>
              <SideWord side={line.side} />
            </span>{' '}
            {procedures[line.procedure] ?? line.procedure}
          </p>
          <p className="soft">{fill(words.surgeon, { name: line.surgeon })}</p>
          <p className="soft">
            {anaesthetist === null ? words.noAnaesthetist : fill(words.anaesthetist, { name: anaesthetist })}
          </p>
          <p className={styles.state} data-state={line.state}>
            {words.states[line.state]}
          </p>
          {line.signOut !== null && (
            <p className={styles.state} data-state={line.signOut}>
              {signOutInEnglish.states[line.signOut]}
            </p>
          )}
          <p data-screen-only>
            <Link href={roomHref(placeOf(line.stream), line.operation)} aria-label={`${roomInEnglish.open}: ${name}`}>
              {roomInEnglish.open}
            </Link>
          </p>
        </div>
      </div>
      <Missing line={line} name={name} />
      <Before line={line} day={day} />
    </li>
  )
}

/** The place of a case in the address. */
function placeOf(stream: string): string {
  return stream.replace(/^case:/, '')
}

function isTimed({ precision }: ListedOperation): boolean {
  return precision === 'minute' || precision === 'second'
}

/** The clock alone on the day of the operation, else with its day. */
function clockOn(at: string, zone: string, day: string): string {
  if (dayOf({ at, zone }) !== day) return sayWhen(at, zone)
  return clockOf(at, zone)
}

const levels = ['block', 'confirm', 'note'] as const

function Missing({ line, name }: { readonly line: ListedOperation; readonly name: string }) {
  const { missing, sides, stream, operation, state } = line
  if (state === 'done') return <div />
  if (missing.length === 0) return <p className={styles.complete}>{words.complete}</p>
  const place = placeOf(stream)
  return (
    <div className={styles.missing}>
      <h4 className={styles.small}>{words.stillMissing}</h4>
      {levels.map((level) => {
        const some = missing.filter((one) => one.level === level)
        if (some.length === 0) return null
        return (
          <div key={level} className={styles.group} data-level={level}>
            <p className={styles.level}>{words.levels[level]}</p>
            <ul className="bare">
              {some.map((one) => (
                <li key={`${one.code} ${JSON.stringify(one.about)}`} className={styles.item}>
                  <Link
                    href={settleHref(place, operation, one.settledBy)}
                    className={styles.settle}
                    title={fill(words.settle, { name })}
                  >
                    {fill(words.missing[one.code], one.about)}
                  </Link>
                  {one.code === 'side-disagreement' &&
                    sides.map((said) => <Disagreement key={said.settle} said={said} />)}
                  {one.why !== '' && <Why why={one.why} sources={one.sources} />}
                </li>
              ))}
            </ul>
          </div>
        )
      })}
    </div>
  )
}

/** Everybody who names a side, one a line, under the side they name. */
function Disagreement({ said: { parts, settle } }: { readonly said: ListedOperation['sides'][number] }) {
  return (
    <div className={styles.disagreement}>
      {parts.map(({ said, sources }) => (
        <div key={said}>
          <p>
            <WithSides text={said} />
          </p>
          <ul>
            {sources.map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        </div>
      ))}
      <p>
        <strong>{settle}</strong>
      </p>
    </div>
  )
}

function Why({ why, sources }: { readonly why: string; readonly sources: readonly string[] }) {
  return (
    <details className={styles.why} data-screen-only>
      <summary>{words.why}</summary>
      <p>{why}</p>
      {sources.length > 0 && <p className="soft">{fill(words.sources, { list: sources.join(', ') })}</p>}
    </details>
  )
}

function Before({ line, day }: { readonly line: ListedOperation; readonly day: string }) {
  const { pen } = useWho()
  const { fasting, admission, weight } = line
  const clock = (at: string) => clockOn(at, pen.zone, day)
  return (
    <div className={styles.before}>
      {line.state !== 'done' && (
        <>
          <h4 className={styles.small}>{words.mealAndArrival}</h4>
          {fasting.kind === 'times' ? (
            <>
              <p>
                <strong>{fill(words.lastMeal, { from: clock(fasting.from), until: clock(fasting.by) })}</strong>
              </p>
              <Why why={fasting.why} sources={fasting.sources} />
            </>
          ) : (
            <p>{fill(words.fastingUnknown, { missing: fasting.missing.map((one) => words.known[one]).join(', ') })}</p>
          )}
          {admission && (
            <p>
              {admission.precision === 'day'
                ? fill(words.admissionDay, { day: sayDay(admission.from, pen.zone) })
                : fill(words.admissionAt, { from: clock(admission.from), until: clock(admission.by) })}
            </p>
          )}
        </>
      )}
      <h4 className={styles.small}>{words.lastWeight}</h4>
      <p>
        {weight === null
          ? words.noWeight
          : `${fill(words.weight, { weight: weight.value, when: sayDay(weight.at, pen.zone) })}, ${words.how[weight.how]}`}
      </p>
    </div>
  )
}
