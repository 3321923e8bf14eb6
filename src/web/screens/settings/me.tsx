import { type FormEvent, useState } from 'react'
import { settingsInEnglish, meInEnglish as words } from '#content/wording/app-settings.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { pinSchema } from '#core/people/pin.ts'
import { TextField } from '../../design/text-field.tsx'
import { call } from '../../journal/api.ts'
import { lookWho } from '../../session/session.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import styles from './settings.module.css'

/** One's own password and PIN. Neither is ever kept in a draft. */
export function MeScreen() {
  const { me } = useWho()
  return (
    <SettingsPage part="me" lead={fill(words.who, { name: me.name, role: shell.roles[me.role] })}>
      <PasswordForm />
      <PinForm />
    </SettingsPage>
  )
}

function PasswordForm() {
  const [old, setOld] = useState('')
  const [fresh, setFresh] = useState('')
  const [again, setAgain] = useState('')
  const { doing, run, fail, working } = useDoing()
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    if (fresh !== again) return fail(words.password.differ)
    const done = await run(async () => {
      await call('change-password', { password: old, newPassword: fresh })
      return words.password.done
    })
    if (done) for (const set of [setOld, setFresh, setAgain]) set('')
  }
  return (
    <section aria-labelledby="password" className={styles.part}>
      <h2 id="password">{words.password.title}</h2>
      <form onSubmit={submit} className="stack">
        <Secret label={words.password.old} value={old} onChange={setOld} complete="current-password" />
        <Secret
          label={words.password.fresh}
          help={words.password.freshHelp}
          value={fresh}
          onChange={setFresh}
          complete="new-password"
        />
        <Secret label={words.password.again} value={again} onChange={setAgain} complete="new-password" />
        <DoingNote doing={doing} />
        <p>
          <button type="submit" data-weight="main" disabled={working}>
            {working ? settingsInEnglish.saving : words.password.save}
          </button>
        </p>
      </form>
    </section>
  )
}

function PinForm() {
  const { me } = useWho()
  const [fresh, setFresh] = useState('')
  const [again, setAgain] = useState('')
  const { doing, run, fail, working } = useDoing()
  const set = (pin: string | null) =>
    run(async () => {
      await call('set-pin', { pin })
      setFresh('')
      setAgain('')
      await lookWho()
      return pin === null ? words.pin.gone : words.pin.done
    })
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (!pinSchema.safeParse(fresh).success) return fail(words.pin.wrong)
    if (fresh !== again) return fail(words.pin.differ)
    void set(fresh)
  }
  return (
    <section aria-labelledby="pin" className={styles.part}>
      <h2 id="pin">{words.pin.title}</h2>
      <p>{me.pin ? words.pin.there : words.pin.none}</p>
      <form onSubmit={submit} className="stack">
        <Secret label={words.pin.fresh} help={words.pin.help} value={fresh} onChange={setFresh} complete="off" digits />
        <Secret label={words.pin.again} value={again} onChange={setAgain} complete="off" digits />
        <DoingNote doing={doing} />
        <div className="row">
          <button type="submit" data-weight="main" disabled={working}>
            {working ? settingsInEnglish.saving : words.pin.save}
          </button>
          {me.pin && (
            <button type="button" disabled={working} onClick={() => void set(null)}>
              {words.pin.clear}
            </button>
          )}
        </div>
      </form>
    </section>
  )
}

function Secret(props: {
  readonly label: string
  readonly help?: string
  readonly value: string
  readonly onChange: (value: string) => void
  readonly complete: string
  readonly digits?: boolean
}) {
  const { label, help, value, onChange, complete, digits = false } = props
  return (
    <TextField
      label={label}
      help={help}
      type="password"
      autoComplete={complete}
      inputMode={digits ? 'numeric' : 'text'}
      required
      value={value}
      onText={onChange}
    />
  )
}
