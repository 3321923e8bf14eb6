import { type FormEvent, useState } from 'react'
import { daysInEnglish } from '#content/wording/app-days.ts'
import { settingsInEnglish, registersInEnglish as words } from '#content/wording/app-settings.ts'
import type { ClinicRow } from '#core/journal/registers.ts'
import { Field } from '../../design/field.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useHouse } from '../../journal/cases.ts'
import { useDraft } from '../../journal/drafts.ts'
import { lookWho } from '../../session/session.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { putRow } from './register-rows.ts'
import styles from './settings.module.css'
import { type Standing, standing } from './standing.ts'

/** The clinic's own page: name, phones, zone, how numbers are written. */
export function ClinicScreen() {
  const reading = useHouse()
  const refusal = useRefusal(['manager', 'desk'], true)
  return (
    <SettingsPage part="clinic">
      {refusal && <p className="soft">{refusal}</p>}
      <ReadingView reading={reading}>
        {({ rows }) => {
          const [clinic] = standing(rows, 'clinic')
          return clinic ? <ClinicForm key={JSON.stringify(clinic.body)} clinic={clinic} refusal={refusal} /> : null
        }}
      </ReadingView>
    </SettingsPage>
  )
}

type Draft = Readonly<Record<(typeof texts)[number] | 'address', string>> &
  Pick<ClinicRow, 'decimalMark' | 'closedWeekdays'>
const texts = ['name', 'phone', 'outOfHoursPhone', 'email', 'zone', 'language', 'currency'] as const
const labels = {
  name: words.clinic.name,
  phone: words.clinic.phone,
  outOfHoursPhone: words.clinic.outOfHours,
  email: words.clinic.email,
  zone: words.clinic.zone,
  language: words.clinic.language,
  currency: words.clinic.currency,
} as const
const helps: Partial<Record<(typeof texts)[number], string>> = {
  zone: words.clinic.zoneHelp,
  currency: words.clinic.currencyHelp,
}
const mayBeEmpty = new Set<string>(['outOfHoursPhone', 'email'])

function draftOf(body: ClinicRow): Draft {
  const { address, outOfHoursPhone, email, ...rest } = body
  return { ...rest, outOfHoursPhone: outOfHoursPhone ?? '', email: email ?? '', address: address.join('\n') }
}

function bodyOf({ address, outOfHoursPhone, email, ...rest }: Draft): ClinicRow {
  const lines = address.split('\n').map((line) => line.trim())
  return {
    ...rest,
    address: lines.filter((line) => line !== ''),
    outOfHoursPhone: outOfHoursPhone.trim() || null,
    email: email.trim() || null,
  }
}

function ClinicForm(props: { readonly clinic: Standing<ClinicRow>; readonly refusal: string | null }) {
  const { clinic, refusal } = props
  const { me } = useWho()
  const { draft, change, clear } = useDraft<Draft>('clinic', me.id, () => draftOf(clinic.body))
  const [zones] = useState(() => Intl.supportedValuesOf('timeZone'))
  const { doing, run, working } = useDoing()
  const submit = async (event: FormEvent) => {
    event.preventDefault()
    const done = await run(async () => {
      await putRow('clinic', clinic.id, bodyOf(draft))
      await lookWho()
      return settingsInEnglish.saved
    })
    if (done) await clear()
  }
  return (
    <form onSubmit={submit} className="stack">
      <fieldset disabled={refusal !== null} className="stack">
        <legend className="said">{settingsInEnglish.parts.clinic.title}</legend>
        {texts.map((field) => (
          <TextField
            key={field}
            label={mayBeEmpty.has(field) ? `${labels[field]} (${settingsInEnglish.optional})` : labels[field]}
            help={helps[field]}
            required={!mayBeEmpty.has(field)}
            maxLength={300}
            autoComplete="off"
            list={field === 'zone' ? 'zones' : undefined}
            value={draft[field]}
            onText={(text) => change({ ...draft, [field]: text })}
          />
        ))}
        <datalist id="zones">
          {zones.map((zone) => (
            <option key={zone} value={zone} />
          ))}
        </datalist>
        <Field label={words.clinic.address} help={words.clinic.addressHelp}>
          {(control) => (
            <textarea
              {...control}
              value={draft.address}
              onChange={(event) => change({ ...draft, address: event.target.value })}
            />
          )}
        </Field>
        <Marks draft={draft} onChange={change} />
        <Weekdays draft={draft} onChange={change} />
        <DoingNote doing={doing} />
        <p>
          <button type="submit" data-weight="main" disabled={working}>
            {working ? settingsInEnglish.saving : settingsInEnglish.save}
          </button>
        </p>
      </fieldset>
    </form>
  )
}

type Part = { readonly draft: Draft; readonly onChange: (draft: Draft) => void }

function Marks({ draft, onChange }: Part) {
  return (
    <fieldset>
      <legend className={styles.asked}>{words.clinic.decimalMark}</legend>
      <div className={styles.choices}>
        {(['.', ','] as const).map((mark) => (
          <label key={mark}>
            <input
              type="radio"
              name="decimal-mark"
              checked={draft.decimalMark === mark}
              onChange={() => onChange({ ...draft, decimalMark: mark })}
            />
            {words.clinic.decimalMarks[mark]}
          </label>
        ))}
      </div>
    </fieldset>
  )
}

function Weekdays({ draft, onChange }: Part) {
  const { closedWeekdays } = draft
  const toggle = (day: number) =>
    closedWeekdays.includes(day) ? closedWeekdays.filter((one) => one !== day) : [...closedWeekdays, day].sort()
  return (
    <fieldset>
      <legend className={styles.asked}>{words.clinic.closed}</legend>
      <div className={styles.choices}>
        {daysInEnglish.weekdays.map((name, index) => (
          <label key={name}>
            <input
              type="checkbox"
              checked={closedWeekdays.includes(index + 1)}
              onChange={() => onChange({ ...draft, closedWeekdays: toggle(index + 1) })}
            />
            {name}
          </label>
        ))}
      </div>
    </fieldset>
  )
}
