import { useState } from 'react'
import { Link } from 'wouter'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { chosenEdition, editionPolicy, factsOfHouse } from '#core/culture/house-facts.ts'
import { ownDefaultsOf } from '#core/dosing/own-defaults.ts'
import { isUnreadableFigurePolicy } from '#core/evidence/own/own-rules.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { policiesOf } from '#core/owed/policies.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import { Provenance } from '../../design/provenance.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { ownValue } from './own-spans.ts'
import { type Policy, PolicyForm } from './policy-form.tsx'
import { policyName, policyValue } from './policy-name.ts'
import styles from './settings.module.css'
import { TakeBack } from './take-back.tsx'

type Opened =
  | { readonly what: 'form'; readonly policy: Policy | null }
  | { readonly what: 'off'; readonly policy: Policy }

/** Defaults that this clinic changed. */
export function HousePoliciesScreen() {
  const reading = useHouse()
  const refusal = useRefusal(mayWrite['house-policy'])
  const [opened, setOpened] = useState<Opened | null>(null)
  const close = () => setOpened(null)
  return (
    <SettingsPage
      part="policies"
      actions={
        <button
          type="button"
          data-weight="main"
          disabled={refusal !== null}
          onClick={() => setOpened({ what: 'form', policy: null })}
        >
          {words.add}
        </button>
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      <p>
        <Link href="/sources/policies">{words.sources}</Link>
      </p>
      <ReadingView reading={reading}>
        {({ file }) => (
          <>
            <List file={file} refusal={refusal} onOpen={setOpened} />
            {opened?.what === 'form' && <PolicyForm house={file.house} policy={opened.policy} onClose={close} />}
            {opened?.what === 'off' && (
              <TakeBack
                ids={[opened.policy.header.id]}
                title={fill(words.offTitle, { policy: policyName(opened.policy.body.policy) })}
                help={words.offHelp}
                because={words.offBecause}
                verb={words.off}
                onClose={close}
              />
            )}
          </>
        )}
      </ReadingView>
    </SettingsPage>
  )
}

function List(props: {
  readonly file: CaseFile
  readonly refusal: string | null
  readonly onOpen: (opened: Opened) => void
}) {
  const { file, refusal, onOpen } = props
  const lines = file.house.live('house-policy')
  const unreadable = new Set([
    ...policiesOf(file).unreadable.map(({ body }) => body.policy),
    ...ownDefaultsOf(file.house, dosingRules).unreadable.map(({ policy }) => policy),
    ...lines.flatMap(({ body }) => (isUnreadableFigurePolicy(body) ? [body.policy] : [])),
    ...(chosenEdition(file, factsOfHouse(file, susceptibility).editions) ? [] : [editionPolicy]),
  ])
  if (lines.length === 0) return <p>{words.none}</p>
  return (
    <ul className={`bare ${styles.lines}`}>
      {lines.map((policy) => {
        const { body, header } = policy
        const own = ownValue(body.policy)
        return (
          <li key={header.id} className={styles.line}>
            <div>
              <p className={styles.name}>
                {policyName(body.policy)}: {policyValue(body, file)}
              </p>
              <p>{body.because}</p>
              {unreadable.has(body.policy) && (
                <p>
                  <strong>{words.unreadable}</strong>
                </p>
              )}
              {own && (
                <div className="row">
                  <span>{fill(words.ours, { value: sayContent(own.value) })}</span>
                  <Provenance fact={own} />
                </div>
              )}
              <p className="soft">{fill(words.since, whoWrote(file, policy))}</p>
            </div>
            <div className="row">
              <button type="button" disabled={refusal !== null} onClick={() => onOpen({ what: 'form', policy })}>
                {settingsInEnglish.change}
                <span className="said"> {policyName(body.policy)}</span>
              </button>
              <button
                type="button"
                data-weight="quiet"
                disabled={refusal !== null}
                onClick={() => onOpen({ what: 'off', policy })}
              >
                {words.off}
                <span className="said"> {policyName(body.policy)}</span>
              </button>
            </div>
          </li>
        )
      })}
    </ul>
  )
}
