import { type ReactNode, useState } from 'react'
import { Link } from 'wouter'
import { ledgerScreenInEnglish as words } from '#content/wording/app-ledger.ts'
import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { isPressure } from '#core/theatre/last-values.ts'
import type { Observation, ObservedValue } from '#core/theatre/ledger.ts'
import { clockOf } from '#core/time/moment.ts'
import { sayBeside } from '#documents/anaesthetic-record/say-row.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { useOneTap } from '../../../../journal/use-one-tap.ts'
import { conflictHref, historyHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'
import styles from './ledger.module.css'
import { useObserving } from './use-observing.ts'

/** One look: its values beside each other, each pressure with its method, an artefact readable and named. */
export function ObservationCell(props: {
  readonly line: Observation
  readonly sideBySide: boolean
  readonly operation: OperationOnFile
  readonly mayWrite: boolean
  readonly children: ReactNode
}) {
  const { line, sideBySide, operation, mayWrite, children } = props
  const { file, id } = useCaseView()
  const { mark } = useObserving(operation)
  const once = useOneTap()
  const [open, setOpen] = useState(false)
  const { values } = line.body
  const at = clockOf(line.at, file.clinic.zone)
  const beside = sayBeside(line)
  const history = (
    <Link
      href={historyHref(id, line.header.id)}
      data-screen-only
      aria-label={fill(words.historySaid, { at })}
      className={styles.history}
    >
      {words.history}
    </Link>
  )
  const toggle = (index: number) => {
    setOpen(false)
    once(() => mark(line, index))
  }
  return (
    <div className={styles.look}>
      <div className={styles.said}>
        {values.length > 0 && (
          <ul className={`bare ${styles.values}`}>
            {values.map((value, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the values of an entry never move.
              <Value key={index} value={value} />
            ))}
          </ul>
        )}
        {beside.map((said) => (
          <p key={said}>{said}</p>
        ))}
        {values.length === 0 && beside.length === 0 && <p>{capital(ledgerInEnglish.nothingWritten)}</p>}
        {sideBySide && (
          <p className={room.stop}>
            {ledgerInEnglish.sideBySide} <Link href={conflictHref(id, line.header.id)}>{words.settle}</Link>
          </p>
        )}
      </div>
      <div className={styles.side}>
        {children}
        {mayWrite && values.length > 0 && !sideBySide && (
          <button
            type="button"
            data-weight="quiet"
            data-screen-only
            aria-expanded={open}
            aria-label={fill(words.markSaid, { at })}
            onClick={() => setOpen(!open)}
          >
            {words.mark}
          </button>
        )}
        {values.length === 0 && history}
      </div>
      {open && (
        <fieldset className={styles.marks} data-screen-only>
          <legend>{words.markLegend}</legend>
          {values.map((value, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the values of an entry never move.
            <button key={index} type="button" onClick={() => toggle(index)}>
              {fill(value.artefact ? words.isTrue : words.isArtefact, {
                value: capital(
                  fill(ledgerInEnglish.value, {
                    what: ledgerInEnglish.names[value.what],
                    value: sayUnit(value.value),
                  }),
                ),
              })}
            </button>
          ))}
          {history}
        </fieldset>
      )}
    </div>
  )
}

function Value({ value: { what, value, method, artefact } }: { readonly value: ObservedValue }) {
  const how =
    method !== null ? fill(ledgerInEnglish.method, { method }) : isPressure(what) ? ledgerInEnglish.noMethod : null
  return (
    <li className={styles.value} data-artefact={artefact}>
      <span className={styles.name}>
        {isPressure(what) ? words.pressureNames[what] : capital(ledgerInEnglish.names[what])}{' '}
      </span>
      <span className={styles.number}>{sayUnit(value)}</span>
      {artefact && <strong> {ledgerInEnglish.artefact}</strong>}
      {how !== null && <span className={styles.method}> {how}</span>}
    </li>
  )
}
