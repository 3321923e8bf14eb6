import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { daysInEnglish } from '#content/wording/app-days.ts'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { settingsInEnglish, registersInEnglish as words } from '#content/wording/app-settings.ts'
import { readDay, readText } from '#core/forms/read-leaf.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay, weekdayOf } from '#core/time/calendar-day.ts'
import { ListGroup } from '../../design/list-group.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useHouse } from '../../journal/cases.ts'
import { useDraft } from '../../journal/drafts.ts'
import { useMinute } from '../../journal/use-minute.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { putRow } from './register-rows.ts'
import styles from './settings.module.css'
import { type ClosedDay, type Standing, standing } from './standing.ts'

/** A closed day is planned by its weekday. */
const say = (day: string) =>
  fill(daysInEnglish.other, { weekday: daysInEnglish.weekdays[weekdayOf(day) - 1] ?? '', day: sayCalendarDay(day) })

/** Days on which no visit can fall due. */
export function ClosedDaysScreen() {
  const reading = useHouse()
  const { clinic, pen } = useWho()
  const now = useMinute()
  const today = dayOf({ at: now, zone: pen.zone })
  const refusal = useRefusal(['manager', 'desk'], true)
  const { doing, run, working } = useDoing()
  const weekly = clinic.row.closedWeekdays.map((day) => daysInEnglish.weekdays[day - 1]).join(', ')
  const remove = (day: string) =>
    run(async () => {
      await putRow('closed-day', day, null)
      return settingsInEnglish.saved
    })
  return (
    <SettingsPage part="closed-days">
      <p>
        {weekly ? fill(words.closed.weekly, { days: weekly }) : words.closed.noWeekly}{' '}
        <Link href="/settings/clinic">{words.closed.changeWeekly}</Link>
      </p>
      {refusal ? <p className="soft">{refusal}</p> : <AddDay />}
      <DoingNote doing={doing} />
      <ReadingView reading={reading}>
        {({ rows }) => {
          const days = [...standing(rows, 'closed-day')].sort((a, b) => (a.id < b.id ? -1 : 1))
          const coming = days.filter(({ body }) => body.day >= today)
          const past = days.filter(({ body }) => body.day < today)
          const onRemove = refusal === null && !working ? (id: string) => void remove(id) : null
          return (
            <>
              <ListGroup id="closed-coming" title={words.closed.coming} beside={coming.length} quiet>
                {coming.length === 0 && <p>{words.closed.noneComing}</p>}
                <DayList days={coming} onRemove={onRemove} />
              </ListGroup>
              {past.length > 0 && (
                <details className={styles.past}>
                  <summary>{fill(words.closed.past, { count: String(past.length) })}</summary>
                  <DayList days={past} onRemove={onRemove} />
                </details>
              )}
            </>
          )
        }}
      </ReadingView>
    </SettingsPage>
  )
}

function DayList(props: {
  readonly days: readonly Standing<ClosedDay>[]
  readonly onRemove: ((id: string) => void) | null
}) {
  const { days, onRemove } = props
  return (
    <ul className={`bare ${styles.lines}`}>
      {days.map(({ id, body }) => (
        <li key={id} className={styles.line}>
          <div>
            <p className={styles.name}>{say(body.day)}</p>
            <p>{body.because}</p>
          </div>
          <button
            type="button"
            data-weight="quiet"
            disabled={onRemove === null}
            onClick={() => confirm(fill(words.removeSure, { what: say(body.day) })) && onRemove?.(id)}
          >
            {words.remove}
            <span className="said"> {say(body.day)}</span>
          </button>
        </li>
      ))}
    </ul>
  )
}

function AddDay() {
  const { me } = useWho()
  const { draft, change, clear } = useDraft('closed-day', me.id, () => ({ day: '', because: '' }))
  const [tried, setTried] = useState(false)
  const { doing, run, working } = useDoing()
  const day = readDay(draft.day)
  const because = readText(draft.because, 300)
  const errorOf = (read: typeof day) =>
    tried && read.kind === 'refusal' ? fill(formRefusals[read.refusal.because], read.refusal.about) : null
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (day.kind === 'refusal' || because.kind === 'refusal') return
    const body = { day: String(day.answer), because: String(because.answer) }
    const done = await run(async () => {
      await putRow('closed-day', body.day, body)
      return settingsInEnglish.saved
    })
    if (!done) return
    setTried(false)
    change({ day: '', because: '' })
    await clear()
  }
  return (
    <form onSubmit={submit} className="stack" noValidate aria-label={words.closed.add}>
      <div className={styles.two}>
        <TextField
          label={words.closed.day}
          help={words.closed.dayHelp}
          error={errorOf(day)}
          autoComplete="off"
          value={draft.day}
          onText={(text) => change({ ...draft, day: text })}
        />
        <TextField
          label={words.closed.because}
          help={words.closed.becauseHelp}
          error={errorOf(because)}
          autoComplete="off"
          value={draft.because}
          onText={(text) => change({ ...draft, because: text })}
        />
      </div>
      <DoingNote doing={doing} />
      <p>
        <button type="submit" data-weight="main" disabled={working}>
          {words.closed.add}
        </button>
      </p>
    </form>
  )
}
