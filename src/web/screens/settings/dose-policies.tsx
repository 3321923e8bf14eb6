import { useState } from 'react'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import { rowBehind } from '#core/dosing/read-plan.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { sayUnit } from '#documents/case/say-quantity.ts'
import { Caution } from '../../design/caution.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { whoWrote } from '../../journal/who-wrote.ts'
import { RangesBeside } from '../sources/ranges.tsx'
import { type DosePolicy, DosePolicyForm } from './dose-policy-form.tsx'
import { dosePolicyName } from './dose-policy-name.ts'
import { drugs } from './drugs.ts'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import styles from './settings.module.css'
import { TakeBack } from './take-back.tsx'

type Opened =
  | { readonly what: 'form'; readonly policy: DosePolicy | null }
  | { readonly what: 'off'; readonly policy: DosePolicy }

/** The doses this house starts from when nobody chose one. */
export function DosePoliciesScreen() {
  const reading = useHouse()
  const refusal = useRefusal(mayWrite['dose-policy'])
  const [opened, setOpened] = useState<Opened | null>(null)
  const close = () => setOpened(null)
  return (
    <SettingsPage
      part="doses"
      actions={
        <button
          type="button"
          data-weight="main"
          disabled={refusal !== null}
          onClick={() => setOpened({ what: 'form', policy: null })}
        >
          {words.doseAdd}
        </button>
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      <ReadingView reading={reading}>
        {({ file }) => {
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
                      <div className="row">
                        <button
                          type="button"
                          disabled={refusal !== null}
                          onClick={() => setOpened({ what: 'form', policy })}
                        >
                          {settingsInEnglish.change}
                          <span className="said"> {dosePolicyName(body)}</span>
                        </button>
                        <button
                          type="button"
                          data-weight="quiet"
                          disabled={refusal !== null}
                          onClick={() => setOpened({ what: 'off', policy })}
                        >
                          {words.off}
                          <span className="said"> {dosePolicyName(body)}</span>
                        </button>
                      </div>
                    </li>
                  )
                })}
              </ul>
              {opened?.what === 'form' && <DosePolicyForm house={file.house} policy={opened.policy} onClose={close} />}
              {opened?.what === 'off' && (
                <TakeBack
                  ids={[opened.policy.header.id]}
                  title={fill(words.offTitle, { policy: dosePolicyName(opened.policy.body) })}
                  help={words.doseNone}
                  because={words.offBecause}
                  verb={words.off}
                  onClose={close}
                />
              )}
            </>
          )
        }}
      </ReadingView>
      <Caution />
    </SettingsPage>
  )
}
