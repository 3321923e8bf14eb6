import { type FormEvent, useId, useState } from 'react'
import { sessionInEnglish } from '#content/wording/app-session.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { Field } from '../design/field.tsx'
import { Notice } from '../design/notice.tsx'
import { TextField } from '../design/text-field.tsx'
import { Refused, Unreachable } from '../journal/api.ts'
import { useDraft } from '../journal/drafts.ts'
import { useFaultFocus } from '../screens/case/use-fault-focus.ts'
import { Door } from './door.tsx'
import styles from './first-run.module.css'
import { type FrontDoor, type Opening, openClinic } from './session.ts'

const words = sessionInEnglish.firstRun
const roles = ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'] as const
type Choice = Opening['choice']

/** What the server may refuse of a field that stands here: it is said there, and nowhere else. */
const fields: readonly string[] = [
  'clinic.name',
  'clinic.phone',
  'clinic.outOfHoursPhone',
  'clinic.zone',
  'clinic.currency',
  'person.name',
  'person.role',
  'login',
  'password',
  'code',
]

type Draft = {
  readonly choice: Choice | null
  readonly clinicName: string
  readonly zone: string
  readonly language: string
  readonly currency: string
  readonly phone: string
  readonly outOfHours: string
  readonly decimalMark: '.' | ','
  readonly name: string
  readonly role: (typeof roles)[number] | ''
  readonly login: string
}

const empty = (): Draft => ({
  choice: null,
  clinicName: '',
  zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  language: 'en',
  currency: '',
  phone: '',
  outOfHours: '',
  decimalMark: '.',
  name: '',
  role: '',
  login: '',
})

/**
 * The first account: of a server that holds no clinic yet, an invented practice to try or an empty clinic; of one into
 * which a clinic was imported, that clinic as it is.
 */
export function FirstRun({ door }: { readonly door: FrontDoor }) {
  const { draft, change, clear } = useDraft<Draft>('first-run', 'nobody', empty)
  const [code, setCode] = useState('')
  const [password, setPassword] = useState('')
  const [refusal, setRefusal] = useState<{ readonly path: string; readonly message: string } | null>(null)
  const [working, setWorking] = useState(false)
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const set = (part: Partial<Draft>) => change({ ...draft, ...part })
  const choices: readonly Choice[] = door.clinicName === null ? ['invented-practice', 'empty-clinic'] : ['this-clinic']
  const chosen = choices.find((choice) => choice === draft.choice) ?? null
  const errorAt = (path: string) => (refusal?.path === path ? refusal.message : null)

  const submit = async (event: FormEvent) => {
    event.preventDefault()
    if (chosen === null || draft.role === '') return
    setWorking(true)
    setRefusal(null)
    try {
      await openClinic(openingOf({ ...draft, choice: chosen, role: draft.role }, code, password))
      await clear()
    } catch (failure) {
      if (failure instanceof Refused) setRefusal({ path: failure.path, message: failure.message })
      else if (failure instanceof Unreachable) setRefusal({ path: '', message: sessionInEnglish.signIn.unreachable })
      else throw failure
      setWorking(false)
      setTries((before) => before + 1)
    }
  }

  return (
    <Door title={words.title} clinic={door.clinicName} invented={door.invented}>
      <p className="soft">{door.clinicName === null ? words.intro : words.introThere}</p>
      <form ref={form} onSubmit={submit} className={styles.form}>
        <fieldset className={styles.choices}>
          <legend>{words.choice}</legend>
          {choices.map((choice) => (
            <ChoiceOf key={choice} choice={choice} chosen={chosen} onChoose={(chosen) => set({ choice: chosen })} />
          ))}
        </fieldset>
        {chosen === 'empty-clinic' && <ClinicFields draft={draft} set={set} errorAt={errorAt} />}
        {chosen && (
          <>
            <h2>{words.you}</h2>
            <Text
              label={words.yourName}
              value={draft.name}
              error={errorAt('person.name')}
              onText={(name) => set({ name })}
            />
            <Field label={words.yourRole} error={errorAt('person.role')}>
              {(control) => (
                <select
                  {...control}
                  required
                  value={draft.role}
                  onChange={(event) => set({ role: event.target.value as Draft['role'] })}
                >
                  <option value="" />
                  {roles.map((role) => (
                    <option key={role} value={role}>
                      {shell.roles[role]}
                    </option>
                  ))}
                </select>
              )}
            </Field>
            <Text
              label={words.login}
              help={words.loginHelp}
              value={draft.login}
              error={errorAt('login')}
              onText={(login) => set({ login })}
            />
            <TextField
              label={words.password}
              help={words.passwordHelp}
              error={errorAt('password')}
              type="password"
              autoComplete="new-password"
              required
              value={password}
              onText={setPassword}
            />
            <Text label={words.code} help={words.codeHelp} value={code} error={errorAt('code')} onText={setCode} />
            {refusal && !fields.includes(refusal.path) && (
              <Notice tone="warn" live>
                {refusal.message}
              </Notice>
            )}
            <p>
              <button type="submit" data-weight="main" disabled={working}>
                {working ? words.working : words.open}
              </button>
            </p>
          </>
        )}
      </form>
    </Door>
  )
}

function openingOf(
  draft: Draft & { choice: Choice; role: (typeof roles)[number] },
  code: string,
  password: string,
): Opening {
  const { choice, name, role, login } = draft
  const clinic: Opening['clinic'] =
    choice !== 'empty-clinic'
      ? null
      : {
          name: draft.clinicName,
          address: [],
          phone: draft.phone,
          outOfHoursPhone: draft.outOfHours === '' ? null : draft.outOfHours,
          email: null,
          zone: draft.zone,
          language: draft.language,
          decimalMark: draft.decimalMark,
          currency: draft.currency,
          closedWeekdays: [],
        }
  return { code: code.trim(), choice, clinic, person: { name, role, letters: null }, login, password }
}

function ChoiceOf(props: {
  readonly choice: Choice
  readonly chosen: Choice | null
  readonly onChoose: (choice: Choice) => void
}) {
  const { choice, chosen, onChoose } = props
  const id = useId()
  return (
    <div className={styles.choice}>
      <input
        type="radio"
        id={id}
        name="choice"
        required
        checked={chosen === choice}
        aria-describedby={`${id}-help`}
        onChange={() => onChoose(choice)}
      />
      <label htmlFor={id}>{words[choice]}</label>
      <p id={`${id}-help`} className="soft">
        {words[`${choice}Help`]}
      </p>
    </div>
  )
}

type Parts = {
  readonly draft: Draft
  readonly set: (part: Partial<Draft>) => void
  readonly errorAt: (path: string) => string | null
}

function ClinicFields({ draft, set, errorAt }: Parts) {
  return (
    <>
      <h2>{words.clinic}</h2>
      <Text
        label={words.clinicName}
        value={draft.clinicName}
        error={errorAt('clinic.name')}
        onText={(clinicName) => set({ clinicName })}
      />
      <Text
        label={words.phone}
        value={draft.phone}
        error={errorAt('clinic.phone')}
        onText={(phone) => set({ phone })}
      />
      <Text
        label={words.outOfHours}
        value={draft.outOfHours}
        optional
        error={errorAt('clinic.outOfHoursPhone')}
        onText={(outOfHours) => set({ outOfHours })}
      />
      <Text
        label={words.zone}
        help={words.zoneHelp}
        value={draft.zone}
        error={errorAt('clinic.zone')}
        onText={(zone) => set({ zone })}
      />
      <Text
        label={words.currency}
        help={words.currencyHelp}
        value={draft.currency}
        error={errorAt('clinic.currency')}
        onText={(currency) => set({ currency: currency.toUpperCase() })}
      />
      <Field label={words.decimalMark}>
        {(control) => (
          <select
            {...control}
            value={draft.decimalMark}
            onChange={(event) => set({ decimalMark: event.target.value as '.' | ',' })}
          >
            <option value=".">{words.decimalPoint}</option>
            <option value=",">{words.decimalComma}</option>
          </select>
        )}
      </Field>
    </>
  )
}

function Text(props: {
  readonly label: string
  readonly help?: string
  readonly value: string
  readonly optional?: boolean
  readonly error: string | null
  readonly onText: (text: string) => void
}) {
  const { label, help, value, optional = false, error, onText } = props
  return <TextField label={label} help={help} error={error} required={!optional} value={value} onText={onText} />
}
