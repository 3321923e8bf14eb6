import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { chosenEdition, editionPolicy, factsOfHouse } from '#core/culture/house-facts.ts'
import { ownDefaultsOf } from '#core/dosing/own-defaults.ts'
import { isUnreadableFigurePolicy } from '#core/evidence/own/own-rules.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { policiesOf } from '#core/owed/policies.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import { Provenance } from '../../design/provenance.tsx'
import { whoWrote } from '../../journal/who-wrote.ts'
import { ownValue } from './own-spans.ts'
import { PoliciesPage } from './policies-page.tsx'
import { type Policy, PolicyForm } from './policy-form.tsx'
import { policyName, policyValue } from './policy-name.ts'
import styles from './settings.module.css'

/** Defaults that this clinic changed. */
export function HousePoliciesScreen() {
  return (
    <PoliciesPage
      part="policies"
      kind="house-policy"
      add={words.add}
      offHelp={words.offHelp}
      nameOf={({ policy }) => policyName(policy)}
      lead={
        <p>
          <Link href="/sources/policies">{words.sources}</Link>
        </p>
      }
      list={(file, acts) => <List file={file} acts={acts} />}
      form={({ house }, policy, close) => <PolicyForm house={house} policy={policy} onClose={close} />}
    />
  )
}

function List({ file, acts }: { readonly file: CaseFile; readonly acts: (policy: Policy) => ReactNode }) {
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
            {acts(policy)}
          </li>
        )
      })}
    </ul>
  )
}
