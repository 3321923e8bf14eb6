import { referralInEnglish } from '#content/wording/app-referral.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import { fill } from '#core/outcome/finding.ts'
import type { CallFault, CallMissing } from '#core/referral/first-call.ts'
import { type AskNow, sayBecause, type Triage, type UrgencyStanding } from '#core/referral/triage.ts'
import { Caution } from '../../design/caution.tsx'
import { Choices } from '../../design/choices.tsx'
import { Field } from '../../design/field.tsx'
import { Part, type PartProps } from './part.tsx'
import styles from './screen.module.css'

const words = referralInEnglish.urgency
const urgencies = ['today', 'this-week', 'routine'] as const

/** How urgent by what was answered, and what a person decides. */
export function UrgencyPart(props: PartProps & { readonly judged: Triage; readonly standing: UrgencyStanding }) {
  const { call, put, judged, standing } = props
  const asked = standing.reason === 'asked'
  return (
    <div className={styles.aside}>
      <Part title={words.title}>
        <Suggestion judged={judged} />
        <Choices
          legend={words.choose}
          value={call.urgency}
          options={urgencies}
          say={(one) => triageInEnglish.urgencies[one]}
          onChoose={(urgency) => put({ urgency })}
        />
        <Field
          label={words.own}
          help={asked ? words.ownAsked : words.ownHelp}
          error={asked && call.because.trim() === '' ? triageInEnglish.compared[standing.compared] : null}
        >
          {(control) => (
            <textarea
              {...control}
              rows={2}
              maxLength={2000}
              value={call.because}
              onChange={(event) => put({ because: event.target.value })}
            />
          )}
        </Field>
        <AskNowList judged={judged} />
      </Part>
    </div>
  )
}

/** What to tell the caller, what is still missing, and keeping it. */
export function KeepPart(props: { readonly missing: readonly CallMissing[]; readonly faults: readonly CallFault[] }) {
  const { missing, faults } = props
  const wrong = faults.map((code) => referralInEnglish.faultNames[code])
  const list = [...missing.map((code) => referralInEnglish.missingNames[code]), ...wrong].join(', ')
  return (
    <Part title={referralInEnglish.tell}>
      <ul className={styles.tell}>
        {triageInEnglish.tellOwner.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div className={styles.keep}>
        {list !== '' && <p className="soft">{fill(referralInEnglish.missing, { list })}</p>}
        <button type="submit" data-weight="main" disabled={list !== ''}>
          {referralInEnglish.keep}
        </button>
      </div>
      <Caution />
    </Part>
  )
}

function Suggestion({ judged }: { readonly judged: Triage }) {
  const { suggested, atLeast, redFlags } = judged
  const urgency = triageInEnglish.urgencies[suggested ?? atLeast]
  const nothing = suggested === null && redFlags.length === 0
  const sources = [...new Set(judged.because.flatMap((reason) => ('fact' in reason ? reason.fact.sources : [])))]
  const said = nothing
    ? triageInEnglish.nothingYet
    : suggested === null
      ? triageInEnglish.atLeast
      : triageInEnglish.suggested
  return (
    <div aria-live="polite" className={styles.suggestion}>
      <p className={styles.urgency}>{fill(said, { urgency })}</p>
      {judged.because.length > 0 && <p>{sayBecause(judged, triageInEnglish)}</p>}
      {sources.length > 0 && (
        <details>
          <summary>{words.why}</summary>
          <p className="soft">{fill(words.sources, { list: sources.join(', ') })}</p>
        </details>
      )}
    </div>
  )
}

function AskNowList({ judged: { askNow } }: { readonly judged: Triage }) {
  if (askNow.length === 0) return null
  return (
    <div className={styles.suggestion}>
      <h3 className={styles.ask}>{triageInEnglish.askNow}</h3>
      <ul>
        {askNow.map((one) => (
          <li key={one.kind === 'sign' ? one.sign : one.kind}>{sayAsk(one)}</li>
        ))}
      </ul>
    </div>
  )
}

function sayAsk(ask: AskNow): string {
  if (ask.kind !== 'sign') return triageInEnglish.ask[ask.kind]
  const about = { sign: triageInEnglish.signs[ask.sign], urgency: triageInEnglish.urgencies[ask.could] }
  return fill(triageInEnglish.ask.sign, about)
}
