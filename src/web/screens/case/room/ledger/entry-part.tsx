import { type FormEvent, useRef, useState } from 'react'
import { observation as form } from '#content/forms/observation.ts'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { isPressure, lastValues, lookAgain, pressures } from '#core/theatre/last-values.ts'
import { type Ledger, type Observable, wholeMinutes } from '#core/theatre/ledger.ts'
import { methodsOf, readLook } from '#core/theatre/read-look.ts'
import { clockOf } from '#core/time/moment.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { Notice } from '../../../../design/notice.tsx'
import { TextField } from '../../../../design/text-field.tsx'
import { asServer } from '../../../../journal/device.ts'
import { useDraft } from '../../../../journal/drafts.ts'
import { useNow } from '../../../../journal/use-now.ts'
import { useOneTap } from '../../../../journal/use-one-tap.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import { useFaultFocus } from '../../use-fault-focus.ts'
import { ReasonPart } from '../reason-part.tsx'
import styles from './ledger.module.css'
import { LookAgainPart } from './look-again-part.tsx'
import { useObserving } from './use-observing.ts'
import { ValueField } from './value-field.tsx'

/** In the order in which a monitor and a hand are read; pressures stand together with how they were measured. */
const singles = ['heart-rate', 'respiratory-rate', 'oxygen-saturation', 'end-tidal-co2'] as const
const rest = ['temperature', 'vapour', 'fluids'] as const

const { units } = form.fields['values.value'].unitBy

type LookDraft = {
  readonly values: Readonly<Partial<Record<Observable, string>>>
  readonly method: string
  readonly text: string
  /** When the first of it was typed, by this device; null while nothing is. */
  readonly begun: string | null
}
const every = theatreTimers.observeEvery.value.value

/** Typed so long ago that its moment and the moment of the tap are two. */
function isOld(begun: string, now: string): boolean {
  return every.lt(wholeMinutes(begun, now))
}

const nothing: LookDraft = { values: {}, method: '', text: '', begun: null }

function nameWithUnit(what: Observable): string {
  return fill(words.field, { what: capital(ledgerInEnglish.names[what]), unit: unitWord(units[what]) })
}

/** The next look: type what was measured, one tap for how, one tap to keep it. Nothing is filled in beforehand. */
export function EntryPart(props: { readonly operation: OperationOnFile; readonly ledger: Ledger }) {
  const { operation, ledger } = props
  const { file } = useCaseView()
  const { me, pen } = useWho()
  // By the clock of this device, like the moment at which it was typed.
  const now = useNow()
  const { keep } = useObserving(operation)
  const once = useOneTap(0)
  const [tries, setTries] = useState(0)
  const [said, setSaid] = useState('')
  const [cannot, setCannot] = useState(false)
  const whole = useFaultFocus(tries)
  const first = useRef<HTMLHeadingElement>(null)
  const { draft, change, clear, ready } = useDraft(`ledger ${operation.id}`, me.id, () => nothing)
  if (!ready) return null
  const { decimalMark, zone } = file.clinic
  const last = lastValues(ledger.observations)
  const look = readLook(draft, units, { decimalMark })
  const faults = tries > 0 ? look.faults : []
  const old = draft.begun !== null && look.values.length > 0 && isOld(draft.begun, now)
  const set = (more: Partial<LookDraft>) => {
    setSaid('')
    change({ ...draft, begun: draft.begun ?? new Date().toISOString(), ...more })
  }
  const keepAt = async (then: string | null) => {
    // A second tap of the same finger: what it would keep is kept.
    if (said !== '' && look.faults.some(({ at }) => at === 'look')) return
    setTries(tries + 1)
    if (look.faults.length > 0) return
    const moment = then === null ? null : ({ at: then, zone: pen.zone, precision: 'second', by: 'clock' } as const)
    const entry = await keep({ values: [...look.values], text: draft.text.trim() || null }, moment)
    change(nothing)
    await clear()
    setTries(0)
    setSaid(fill(words.kept, { at: clockOf(asServer(entry.happenedAt.at), zone) }))
    first.current?.focus({ preventScroll: true })
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    once(() => keepAt(null))
  }
  const field = (what: Observable) => (
    <ValueField
      key={what}
      label={isPressure(what) ? words.pressureNames[what] : nameWithUnit(what)}
      last={last.get(what)}
      zone={zone}
      text={draft.values[what] ?? ''}
      fault={faults.find(({ at }) => at === what)}
      onText={(text) => set({ values: { ...draft.values, [what]: text } })}
    />
  )
  const methods = [...new Set([...methodsOf(ledger.observations), ...words.methods])].slice(0, 4)
  const empty = faults.some(({ because }) => because === 'nothing-typed')
  return (
    <section aria-labelledby="next-look" className={styles.entry} data-screen-only>
      <h2 id="next-look" ref={first} tabIndex={-1}>
        {ledger.tubeOut === null ? words.next : words.nextRecovery}
      </h2>
      <p>{words.lead}</p>
      <form ref={whole} className={styles.form} onSubmit={submit} noValidate>
        <div className={styles.fields}>{singles.map(field)}</div>
        <fieldset className={styles.pressures}>
          <legend>{fill(words.pressures, { unit: unitWord(units.mean) })}</legend>
          <div className={styles.threes}>{pressures.map(field)}</div>
          <TextField
            label={words.method}
            help={words.methodHelp}
            error={faults.some(({ at }) => at === 'method') ? words.noMethod : null}
            autoComplete="off"
            maxLength={300}
            value={draft.method}
            onText={(method) => set({ method })}
          />
          <div className={styles.methods}>
            {methods.map((method) => (
              <button key={method} type="button" aria-pressed={draft.method === method} onClick={() => set({ method })}>
                {method}
              </button>
            ))}
          </div>
        </fieldset>
        <div className={styles.fields}>{rest.map(field)}</div>
        <TextField label={words.text} autoComplete="off" value={draft.text} onText={(text) => set({ text })} />
        <LookAgainPart notes={lookAgain(look.values, last)} />
        {empty && (
          <p className={styles.fault} role="alert">
            {words.nothingTyped}
          </p>
        )}
        {old && draft.begun !== null && (
          <Notice tone="warn" title={fill(words.typedThen, { at: clockOf(asServer(draft.begun), zone) })} />
        )}
        <p className={styles.acts}>
          {old && (
            <button type="button" data-weight="main" onClick={() => once(() => keepAt(draft.begun))}>
              {fill(words.keepThen, { at: clockOf(asServer(draft.begun ?? now), zone) })}
            </button>
          )}
          <button type="submit" data-weight={old ? undefined : 'main'}>
            {words.keep}
          </button>
          <button type="button" aria-expanded={cannot} onClick={() => setCannot(true)}>
            {words.cannot}
          </button>
        </p>
        <p role="status">{said}</p>
      </form>
      {cannot && (
        <ReasonPart
          place={`ledger cannot ${operation.id}`}
          words={{
            label: words.because,
            missing: words.becauseMissing,
            keep: words.keepCannot,
            close: words.close,
          }}
          onKeep={async (unmeasured) => {
            await keep({ unmeasured })
            return true
          }}
          onClose={() => setCannot(false)}
        />
      )}
    </section>
  )
}
