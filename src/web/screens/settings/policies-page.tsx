import { type ReactNode, useState } from 'react'
import { settingsInEnglish } from '#content/wording/app-settings.ts'
import { policyInEnglish as words } from '#content/wording/app-settings-doses.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { ReadingView } from '../../design/reading-view.tsx'
import { useHouse } from '../../journal/cases.ts'
import { type Part, SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { TakeBack } from './take-back.tsx'

type PolicyKind = 'dose-policy' | 'house-policy'
type PolicyOf<Kind extends PolicyKind> = Line<BodyOf<Kind>>
type Opened<Policy> =
  | { readonly what: 'form'; readonly policy: Policy | null }
  | { readonly what: 'off'; readonly policy: Policy }

/** What this house decided for itself of one kind: listed, added to, changed, and taken back with a reason. */
export function PoliciesPage<Kind extends PolicyKind>(props: {
  readonly part: Part
  readonly kind: Kind
  readonly add: string
  /** What stands in its place once one is taken back. */
  readonly offHelp: string
  readonly nameOf: (body: BodyOf<Kind>) => string
  readonly lead?: ReactNode
  /** The list; `acts` are the buttons of one line. */
  readonly list: (file: CaseFile, acts: (policy: PolicyOf<Kind>) => ReactNode) => ReactNode
  readonly form: (file: CaseFile, policy: PolicyOf<Kind> | null, onClose: () => void) => ReactNode
  readonly children?: ReactNode
}) {
  const { part, kind, add, offHelp, nameOf, lead, list, form, children } = props
  const reading = useHouse()
  const refusal = useRefusal(mayWrite[kind])
  const [opened, setOpened] = useState<Opened<PolicyOf<Kind>> | null>(null)
  const close = () => setOpened(null)
  const acts = (policy: PolicyOf<Kind>) => {
    const name = nameOf(policy.body)
    return (
      <div className="row">
        <button type="button" disabled={refusal !== null} onClick={() => setOpened({ what: 'form', policy })}>
          {settingsInEnglish.change}
          <span className="said"> {name}</span>
        </button>
        <button
          type="button"
          data-weight="quiet"
          disabled={refusal !== null}
          onClick={() => setOpened({ what: 'off', policy })}
        >
          {words.off}
          <span className="said"> {name}</span>
        </button>
      </div>
    )
  }
  return (
    <SettingsPage
      part={part}
      actions={
        <button
          type="button"
          data-weight="main"
          disabled={refusal !== null}
          onClick={() => setOpened({ what: 'form', policy: null })}
        >
          {add}
        </button>
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      {lead}
      <ReadingView reading={reading}>
        {({ file }) => (
          <>
            {list(file, acts)}
            {opened?.what === 'form' && form(file, opened.policy, close)}
            {opened?.what === 'off' && (
              <TakeBack
                ids={[opened.policy.header.id]}
                title={fill(words.offTitle, { policy: nameOf(opened.policy.body) })}
                help={offHelp}
                because={words.offBecause}
                verb={words.off}
                onClose={close}
              />
            )}
          </>
        )}
      </ReadingView>
      {children}
    </SettingsPage>
  )
}
