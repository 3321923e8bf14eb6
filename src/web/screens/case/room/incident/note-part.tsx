import { type FormEvent, useState } from 'react'
import { useLocation, useSearchParams } from 'wouter'
import { incidentNote as form } from '#content/wording/app-forms/incident-note.ts'
import { incidentInEnglish as words } from '#content/wording/app-incident.ts'
import { nowInEnglish } from '#content/wording/app-now.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type EmergencyAccount, emergencyAccounts } from '#core/theatre/emergency-account.ts'
import { signOutOf } from '#core/theatre/sign-out.ts'
import { type SignOutCode, signOutCodes } from '#core/theatre/sign-out-codes.ts'
import { clockOf } from '#core/time/moment.ts'
import { sayPoint } from '#documents/operation-report/sign-out.ts'
import { Choices } from '../../../../design/choices.tsx'
import { Notice } from '../../../../design/notice.tsx'
import { TextField } from '../../../../design/text-field.tsx'
import { Ticks } from '../../../../design/ticks.tsx'
import { useDraft } from '../../../../journal/drafts.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { useWho } from '../../../../session/use-who.ts'
import { pauseHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { useFaultFocus } from '../../use-fault-focus.ts'
import { AccountPart } from '../account-part.tsx'
import styles from './incident.module.css'
import { useIncidents } from './use-incidents.ts'

type Body = BodyOf<'incident-note'>
type Draft = Omit<Body, 'what' | 'text' | 'point' | 'pointOf'> & {
  readonly what: Body['what'] | null
  readonly text: string
}

const { fields } = form
const keys = <Key extends string>(options: Readonly<Record<Key, string>>) => Object.keys(options) as Key[]

/** One tap is enough: what it was about. Everything else helps and may stay empty. */
export function NotePart(props: { readonly operation: OperationOnFile; readonly onAnother: () => void }) {
  const { operation, onAnother } = props
  const { file, id } = useCaseView()
  const { me } = useWho()
  const { write } = useIncidents(operation)
  const [query] = useSearchParams()
  const [, go] = useLocation()
  const now = useMinute()
  const [tries, setTries] = useState(0)
  const [kept, setKept] = useState<string | null>(null)
  const focus = useFaultFocus(tries)
  const accounts = emergencyAccounts(file.theCase, operation.id)
  const point = signOutCodes.find((code) => code === query.get('point')) ?? null
  const pointOf = point === null ? null : query.get('of')
  const explains = signOutOf(file.theCase, operation.id).points.find((one) => one.code === point && one.of === pointOf)
  const named = accounts.find(({ shout }) => shout.begun.header.id === query.get('emergency'))
  // A note that explains a point of the sign-out begins with that; any other with what was called last.
  const first = named ?? (point === null ? accounts.at(-1) : undefined)
  const { draft, change, clear, ready } = useDraft<Draft>(`incident ${operation.id} ${query}`, me.id, () => ({
    what: point === null ? null : aboutPoint[point],
    during: null,
    reached: null,
    helped: [],
    change: [],
    text: '',
    emergency: first?.shout.begun.header.id ?? null,
  }))
  if (!ready) return null
  const put = (part: Partial<Draft>) => change({ ...draft, ...part })
  const text = draft.text.trim()
  const lacksWhy = point !== null && text === ''
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const { what } = draft
    if (what === null || lacksWhy) return
    const { happenedAt } = await write({ ...draft, what, text: text || null, point, pointOf })
    await clear()
    if (point !== null) go(`${pauseHref(id, operation.id, 'before-leaving')}?at=end`)
    else setKept(happenedAt.at)
  }
  if (kept !== null) {
    return (
      <Notice title={fill(words.kept, { at: clockOf(kept, file.clinic.zone) })} live>
        <p>
          <button type="button" onClick={onAnother}>
            {words.another}
          </button>
        </p>
      </Notice>
    )
  }
  const chosen = accounts.find(({ shout }) => shout.begun.header.id === draft.emergency)
  return (
    <form ref={focus} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
      <p>{fill(words.now, { at: clockOf(now, file.clinic.zone) })}</p>
      {point !== null && (
        <Notice title={words.point}>{explains && <p className={styles.point}>{sayPoint(explains)}</p>}</Notice>
      )}
      {accounts.length > 0 && (
        <Emergency accounts={accounts} value={draft.emergency} onChoose={(emergency) => put({ emergency })} />
      )}
      {chosen && (
        <>
          <p>{words.entries}</p>
          <AccountPart account={chosen} operation={operation} />
        </>
      )}
      <Choices
        legend={fields.what.label}
        error={tries > 0 && draft.what === null ? words.whatMissing : null}
        value={draft.what}
        options={keys(fields.what.options)}
        say={(one) => fields.what.options[one]}
        onChoose={(what) => put({ what })}
      />
      <TextField
        label={point === null ? fields.text.label : words.why}
        error={tries > 0 && lacksWhy ? words.whyMissing : null}
        autoComplete="off"
        value={draft.text}
        onText={(typed) => put({ text: typed })}
      />
      <Choices
        legend={fields.reached.label}
        value={draft.reached}
        options={keys(fields.reached.options)}
        say={(one) => fields.reached.options[one]}
        onChoose={(reached) => put({ reached })}
      />
      <FurtherPart draft={draft} onPut={put} />
      <p>
        <button type="submit" data-weight="main" className={styles.keep}>
          {words.keep}
        </button>
      </p>
    </form>
  )
}

/** Folded, so that on a phone too what keeps the note follows what is asked; open where something of it was said. */
function FurtherPart(props: { readonly draft: Draft; readonly onPut: (part: Partial<Draft>) => void }) {
  const { draft, onPut } = props
  const { during, helped, change } = draft
  const [wasOpen] = useState(during !== null || helped.length > 0 || change.length > 0)
  return (
    <details className={styles.optional} open={wasOpen}>
      <summary>{words.optional}</summary>
      <div className={styles.form}>
        <Choices
          legend={fields.during.label}
          value={draft.during}
          options={keys(fields.during.options)}
          say={(one) => fields.during.options[one]}
          onChoose={(during) => onPut({ during })}
        />
        <Ticks
          legend={fields.helped.label}
          values={draft.helped}
          options={keys(fields.helped.options)}
          say={(one) => fields.helped.options[one]}
          onValues={(helped) => onPut({ helped: [...helped] })}
        />
        <Ticks
          legend={fields.change.label}
          values={draft.change}
          options={keys(fields.change.options)}
          say={(one) => fields.change.options[one]}
          onValues={(wanted) => onPut({ change: [...wanted] })}
        />
      </div>
    </details>
  )
}

/** What a note is about follows from the point that it explains. */
const aboutPoint: Readonly<Record<SignOutCode, Body['what']>> = {
  'specimen-unlabelled': 'specimen',
  'label-twice': 'specimen',
  'count-missing': 'count-or-pack',
  'count-unequal': 'count-or-pack',
  'count-item-missing': 'count-or-pack',
  'throat-pack-in': 'count-or-pack',
  'throat-pack-unsaid': 'count-or-pack',
  'side-unconfirmed': 'side',
  'side-differs': 'side',
}

const no = 'no'

function Emergency(props: {
  readonly accounts: readonly EmergencyAccount[]
  readonly value: string | null
  readonly onChoose: (emergency: string | null) => void
}) {
  const { accounts, value, onChoose } = props
  const ids = accounts.map(({ shout }) => shout.begun.header.id)
  const say = (wanted: string) => {
    const shout = accounts.find((one) => one.shout.begun.header.id === wanted)?.shout
    if (!shout) return words.noEmergency
    const { begun, call } = shout
    return `${nowInEnglish.calls[call]}, ${clockOf(begun.at, begun.header.happenedAt.zone)}`
  }
  return (
    <Choices
      legend={words.emergency}
      value={value ?? no}
      options={[...ids, no]}
      say={say}
      onChoose={(one) => onChoose(one === no ? null : one)}
    />
  )
}
