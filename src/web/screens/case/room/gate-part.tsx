import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type GateCode, inSpiteOf } from '#core/theatre/stamp-gates.ts'
import type { ToStamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, pauseHref, settleHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { KeepOrClose } from '../keep-or-close.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './room.module.css'
import { useStamping } from './use-stamping.ts'

const words = roomInEnglish.gate

/** The moment of a tap that waits for its reason; a reload keeps it. */
export function useTapWaiting(operation: string, item: string) {
  const { me } = useWho()
  const { draft, change, clear } = useDraft(`tap ${operation} ${item}`, me.id, () => ({ at: null as string | null }))
  return { at: draft.at, tap: () => change({ at: new Date().toISOString() }), clear }
}

/** A mark whose condition stands open: what settles it, or why it goes on all the same; the moment of the tap stays. */
export function GatePart(props: {
  readonly at: string
  readonly gates: readonly GateCode[]
  readonly item: ToStamp
  readonly operation: OperationOnFile
  readonly onClose: () => void
}) {
  const { at, gates, item, operation, onClose } = props
  const { file } = useCaseView()
  const { pen } = useWho()
  const { stamp } = useStamping(operation)
  const [tries, setTries] = useState(0)
  const [text, setText] = useState('')
  const form = useFaultFocus(tries)
  const keep = async (because: string | null) => {
    const detail: Record<string, string> = gates.length === 0 ? {} : { [inSpiteOf]: gates.join(' ') }
    await stamp(item.id, { detail, text: because }, { at, zone: pen.zone, precision: 'second', by: 'clock' })
    onClose()
  }
  const typed = (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (text.trim() !== '') void keep(text.trim())
  }
  if (gates.length === 0) {
    return (
      <div className={styles.part}>
        <p>{fill(words.settled, { at: clockOf(at, file.clinic.zone) })}</p>
        <p className="row">
          <button type="button" data-weight="main" onClick={() => void keep(null)}>
            {words.keepNow}
          </button>
          <button type="button" data-weight="quiet" onClick={onClose}>
            {words.close}
          </button>
        </p>
      </div>
    )
  }
  const what = gates.map((code) => reportInEnglish.gates[code]).join('; ')
  return (
    <form ref={form} className={styles.part} onSubmit={typed} noValidate>
      <p className={styles.stop}>{fill(words.title, { what })}</p>
      <p>{fill(words.lead, { at: clockOf(at, file.clinic.zone) })}</p>
      <Settles gates={gates} operation={operation} />
      <p>{words.quick}</p>
      <div className={styles.acts}>
        {[...gates.flatMap((code) => [...words.reasons[code]]), words.emergency].map((reason) => (
          <button key={reason} type="button" onClick={() => void keep(reason)}>
            {reason}
          </button>
        ))}
      </div>
      <TextField
        label={words.because}
        error={tries > 0 && text.trim() === '' ? words.missing : null}
        autoComplete="off"
        value={text}
        onText={setText}
      />
      <KeepOrClose keep={words.keep} close={words.close} onClose={onClose} />
    </form>
  )
}

function Settles({ gates, operation }: { readonly gates: readonly GateCode[]; readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const hrefs: Readonly<Record<GateCode, string>> = {
    baseline: settleHref(id, operation.id, 'baseline'),
    side: `${casePageHref(id)}#sides`,
    consent: settleHref(id, operation.id, 'agreement'),
    'time-out': pauseHref(id, operation.id, 'before-incision'),
    'second-ear': pauseHref(id, operation.id, 'before-second-ear'),
  }
  return (
    <ul>
      {gates.map((code) => (
        <li key={code}>
          <Link href={hrefs[code]}>{words.settle[code]}</Link>
        </li>
      ))}
    </ul>
  )
}
