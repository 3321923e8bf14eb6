import type { ReactNode } from 'react'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { rowBehind } from '#core/dosing/read-plan.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { Caution } from '../../design/caution.tsx'
import { whoWrote } from '../../journal/who-wrote.ts'
import { RangesBeside } from '../sources/ranges.tsx'
import { type DosePolicy, DosePolicyForm } from './dose-policy-form.tsx'
import { dosePolicyName } from './dose-policy-name.ts'
import { drugs } from './drugs.ts'
import { PoliciesPage } from './policies-page.tsx'
import styles from './settings.module.css'

/** The doses this house starts from when nobody chose one. */
export function DosePoliciesScreen() {
  return (
    <PoliciesPage
      part="doses"
      kind="dose-policy"
      add={words.doseAdd}
      offHelp={words.doseNone}
      nameOf={dosePolicyName}
      list={(file, acts) => <List file={file} acts={acts} />}
      form={({ house }, policy, close) => <DosePolicyForm house={house} policy={policy} onClose={close} />}
    >
      <Caution />
    </PoliciesPage>
  )
}

function List({ file, acts }: { readonly file: CaseFile; readonly acts: (policy: DosePolicy) => ReactNode }) {
  const policies = file.house.live('dose-policy')
  return (
    <>
      {policies.length === 0 && <p>{words.doseNone}</p>}
      <ul className={`bare ${styles.lines}`}>
        {policies.map((policy) => {
          const { body, header } = policy
          const row = rowBehind(body, body.species, drugs)
          return (
            <li key={header.id} className={styles.line}>
              <div className="stack">
                <div>
                  <p className={styles.name}>
                    {dosePolicyName(body)}: {sayUnit(body.dose)}
                  </p>
                  <p>{body.because}</p>
                  <p className="soft">{fill(words.since, whoWrote(file, policy))}</p>
                </div>
                {row && <RangesBeside row={row} />}
              </div>
              {acts(policy)}
            </li>
          )
        })}
      </ul>
    </>
  )
}
