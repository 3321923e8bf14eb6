import { type FormEvent, useState } from 'react'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { settingsInEnglish, registersInEnglish as words } from '#content/wording/app-settings.ts'
import { readDay, readText } from '#core/forms/read-leaf.ts'
import { fill } from '#core/outcome/finding.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { sayDay } from '../../design/say-when.ts'
import { TextField } from '../../design/text-field.tsx'
import { useHouse } from '../../journal/cases.ts'
import { useDraft } from '../../journal/drafts.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { putRow } from './register-rows.ts'
import styles from './settings.module.css'
import { standing } from './standing.ts'

const say = (day: string) => sayDay(`${day}T00:00:00.000Z`, 'UTC')

/** Days on which no visit can fall due. */
export function ClosedDaysScreen() {
  const reading = useHouse()
  const { clinic } = useWho()
  const refusal = useRefusal(['manager', 'desk'], true)
  const { doing, run, working } = useDoing()
  const weekly = clinic.row.closedWeekdays.map((day) => words.weekdays[day - 1]).join(', ')
  const remove = (day: string) =>
    run(async () => {
      await putRow('closed-day', day, null)
      return settingsInEnglish.saved
    })
  return (
    <SettingsPage part="closed-days">
      <p>{weekly ? fill(words.closed.weekly, { days: weekly }) : words.closed.noWeekly}</p>
      {refusal ? <p className="soft">{refusal}</p> : <AddDay />}
      <DoingNote doing={doing} />
      <ReadingView reading={reading}>
        {({ rows }) => {
          const days = [...standing(rows, 'closed-day')].sort((a, b) => (a.id < b.id ? -1 : 1))
          return (
            <>
              {days.length === 0 && <p>{words.none}</p>}
              <ul className={`bare ${styles.lines}`}>
                {days.map(({ id, body }) => (
                  <li key={id} className={styles.line}>
                    <div>
                      <p className={styles.name}>{say(body.day)}</p>
                      <p>{body.because}</p>
                    </div>
                    <button
                      type="button"
                      disabled={refusal !== null || working}
                      onClick={() => confirm(fill(words.removeSure, { what: say(body.day) })) && void remove(id)}
                    >
                      {words.remove}
                      <span className="said"> {say(body.day)}</span>
                    </button>
                  </li>
                ))}
              </ul>
            </>
          )
        }}
      </ReadingView>
    </SettingsPage>
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
        <button type="submit" disabled={working}>
          {words.closed.add}
        </button>
      </p>
    </form>
  )
}
