import { useState } from 'react'
import type { PreparedReport } from '#actions/yearly/prepare-report.ts'
import { yearsInEnglish as words } from '#content/wording/app-years.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { Field } from '../../../design/field.tsx'
import { Modal } from '../../../design/modal.tsx'
import { Notice } from '../../../design/notice.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { call } from '../../../journal/api.ts'
import { failed } from '../../../journal/source.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import type { Year } from './year-answer.ts'

/** A person freezes a year after seeing what will be in it and what will stay unknown. */
export function Freeze({ year, today }: { readonly year: Year; readonly today: string }) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <p data-screen-only>
        <button type="button" onClick={() => setOpen(true)}>
          {fill(words.freeze, { year: String(year.year) })}
        </button>
      </p>
      {open && <Ask year={year} today={today} onClose={() => setOpen(false)} />}
    </>
  )
}

function Ask(props: { readonly year: Year; readonly today: string; readonly onClose: () => void }) {
  const { year, today, onClose } = props
  const { pen } = useWho()
  const [decided, setDecided] = useState<readonly [string, string]>(['', ''])
  const [lookedAt, setLookedAt] = useState(today)
  const [busy, setBusy] = useState(false)
  const [refused, setRefused] = useState<string | null>(null)
  const sum = (of: 'ears' | 'animals' | 'lostAfterYear') => year.operations.reduce((all, one) => all + one[of], 0)
  const lost = sum('lostAfterYear')
  const about = { year: String(year.year), next: String(year.year + 1), today: sayCalendarDay(today) }
  const wrongDay = lookedAt === '' || lookedAt > today || lookedAt <= `${year.year}-12-31`
  const keep = async () => {
    setBusy(true)
    setRefused(null)
    try {
      const { body, attachment } = await call<PreparedReport>('prepare-report', { year: year.year, lookedAt })
      await writeEntry(pen, {
        kind: 'report-frozen',
        stream: 'clinic',
        subject: { kind: 'clinic' },
        body: { ...body, decided: decided.map((one) => one.trim()).filter((one) => one !== '') },
        attachments: [attachment],
      })
      onClose()
    } catch (error) {
      setRefused(failed(error).because)
      setBusy(false)
    }
  }
  return (
    <Modal title={fill(words.freezeTitle, { year: String(year.year) })} close={words.cancel} onClose={onClose}>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          if (!busy && !wrongDay) void keep()
        }}
      >
        <p>{fill(words.freezeWhat, { ears: String(sum('ears')), animals: String(sum('animals')) })}</p>
        {lost > 0 && <p>{sayCount(words.freezeLost, lost)}</p>}
        <Field
          label={words.lookedAt}
          help={fill(words.lookedAtHelp, about)}
          error={wrongDay ? fill(words.lookedAtWrong, about) : null}
        >
          {(control) => (
            <input
              {...control}
              type="date"
              value={lookedAt}
              min={`${year.year + 1}-01-01`}
              max={today}
              onChange={({ target }) => setLookedAt(target.value)}
            />
          )}
        </Field>
        <TextField
          label={words.decided}
          value={decided[0]}
          autoComplete="off"
          onText={(text) => setDecided([text, decided[1]])}
        />
        <TextField
          label={words.decidedSecond}
          value={decided[1]}
          autoComplete="off"
          onText={(text) => setDecided([decided[0], text])}
        />
        {refused !== null && (
          <Notice tone="warn" live>
            <p>{refused}</p>
          </Notice>
        )}
        <p className="row">
          <button type="submit" data-weight="main" disabled={busy}>
            {busy ? words.freezing : words.freezeDo}
          </button>
        </p>
      </form>
    </Modal>
  )
}
