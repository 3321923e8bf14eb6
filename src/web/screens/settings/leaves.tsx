import { type FormEvent, useState } from 'react'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { peopleInEnglish as words } from '#content/wording/app-settings-people.ts'
import { readDay } from '#core/forms/read-leaf.ts'
import { fill } from '#core/outcome/finding.ts'
import { Field } from '../../design/field.tsx'
import { Modal } from '../../design/modal.tsx'
import { sayDay } from '../../design/say-when.ts'
import { TextField } from '../../design/text-field.tsx'
import { Ticks } from '../../design/ticks.tsx'
import { call } from '../../journal/api.ts'
import { useDraft } from '../../journal/drafts.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import styles from './settings.module.css'
import type { Person, Staff } from './staff.ts'

type Draft = {
  readonly from: string
  readonly until: string
  readonly deputy: string
  /** Missing in a draft of before. */
  readonly onClosedDays?: boolean
}

/** When somebody is away, and who stands in. */
export function LeaveForm(props: { readonly person: Person; readonly staff: Staff; readonly onClose: () => void }) {
  const { person, staff, onClose } = props
  const { me } = useWho()
  const { draft, change, clear } = useDraft<Draft>(`leave ${person.id}`, me.id, () => ({
    from: '',
    until: '',
    deputy: '',
  }))
  const [tried, setTried] = useState(false)
  const { doing, run, working } = useDoing()
  const days = { from: readDay(draft.from), until: readDay(draft.until) }
  const errorOf = (day: 'from' | 'until') => {
    const read = days[day]
    return tried && read.kind === 'refusal' ? fill(formRefusals[read.refusal.because], read.refusal.about) : null
  }
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const { from, until } = days
    if (from.kind === 'refusal' || until.kind === 'refusal') return
    const { deputy, onClosedDays = false } = draft
    const leave = { person: person.id, from: from.answer, until: until.answer, deputy, onClosedDays }
    const done = await run(async () => {
      await call('set-leave', leave)
      return settingsInEnglish.saved
    })
    if (!done) return
    await clear()
    onClose()
  }
  return (
    <Modal title={fill(words.leaveTitle, { name: person.name })} close={settingsInEnglish.cancel} onClose={onClose}>
      <form onSubmit={submit} className="stack" noValidate>
        <p className="soft">{fill(words.leaveHelp, { name: person.name })}</p>
        {(['from', 'until'] as const).map((day) => (
          <TextField
            key={day}
            label={words[day]}
            help={words.dayHelp}
            error={errorOf(day)}
            autoComplete="off"
            value={draft[day]}
            onText={(text) => change({ ...draft, [day]: text })}
          />
        ))}
        <Ticks
          legend={words.whichDays}
          values={draft.onClosedDays ? (['closed'] as const) : []}
          options={['closed'] as const}
          say={() => words.onClosedDays}
          onValues={(values) => change({ ...draft, onClosedDays: values.length > 0 })}
        />
        <Field label={words.deputy} error={tried && draft.deputy === '' ? formRefusals['not-chosen'] : null}>
          {(control) => (
            <select
              {...control}
              value={draft.deputy}
              onChange={(event) => change({ ...draft, deputy: event.target.value })}
            >
              <option value="">{words.chooseDeputy}</option>
              {staff.people
                .filter(({ id }) => id !== person.id)
                .map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
            </select>
          )}
        </Field>
        <DoingNote doing={doing} />
        <p>
          <button type="submit" data-weight="main" disabled={working || (tried && draft.deputy === '')}>
            {working ? settingsInEnglish.saving : words.saveLeave}
          </button>
        </p>
      </form>
    </Modal>
  )
}

/** Who is away now or later, with the deputy; taken back in one tap. */
export function Leaves({ staff, onDone }: { readonly staff: Staff; readonly onDone: () => void }) {
  const { me } = useWho()
  const { doing, run, working } = useDoing()
  const nameOf = (id: string) => staff.people.find((person) => person.id === id)?.name ?? id
  const open = staff.leaves.filter(({ until }) => until >= staff.today)
  const say = (day: string) => sayDay(`${day}T00:00:00.000Z`, 'UTC')
  return (
    <section aria-labelledby="leaves" className={styles.part}>
      <h2 id="leaves">{words.leaves}</h2>
      {open.length === 0 && <p>{words.noLeaves}</p>}
      <DoingNote doing={doing} />
      <ul className={`bare ${styles.lines}`}>
        {open.map(({ id, person, from, until, deputy }) => (
          <li key={id} className={styles.line}>
            <p>
              {fill(words.leaveLine, {
                name: nameOf(person),
                from: say(from),
                until: say(until),
                deputy: nameOf(deputy),
              })}
            </p>
            <button
              type="button"
              disabled={working || !(me.keeper || person === me.id)}
              onClick={() =>
                void run(async () => {
                  await call('set-leave', { person, from, until, deputy: null })
                  onDone()
                  return settingsInEnglish.saved
                })
              }
            >
              {words.leaveBack}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
