import { procedures } from '#content/procedures/index.ts'
import { signOutInEnglish as words } from '#content/wording/app-sign-out.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { type Draft, draftAt, withDraftAt } from '#core/forms/draft.ts'
import type { Subject } from '#core/journal/entry.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { emergencyAccounts, proposedComplications } from '#core/theatre/emergency-account.ts'
import { signOutOf } from '#core/theatre/sign-out.ts'
import { sayAccount } from '#documents/operation-report/emergency-words.ts'
import { Notice } from '../../../design/notice.tsx'
import { useCaseView } from '../case-view.ts'
import { PointLine } from '../room/sign-out/point-line.tsx'

type Help = {
  readonly subject: Subject | null
  readonly draft: Draft
  readonly onDraft: (draft: Draft) => void
}

/** Above the summary of an operation: what keeps it from being signed out, and what was called in it. */
export function SummaryHelp({ subject, draft, onDraft }: Help) {
  const { operations } = useCaseView()
  const operation = operations.find(({ id }) => subject?.kind === 'operation' && subject.operation === id)
  if (!operation) return null
  return (
    <>
      <Unsettled operation={operation} />
      <Proposed operation={operation} draft={draft} onDraft={onDraft} />
    </>
  )
}

/** What was done can always be signed; that it is not signed out is said before. */
function Unsettled({ operation }: { readonly operation: OperationOnFile }) {
  const { file } = useCaseView()
  const { state, unsettled } = signOutOf(file.theCase, operation.id)
  if (state === 'signed-out') return null
  return (
    <Notice tone="warn" title={words.states[state]}>
      <ul className="bare stack">
        {unsettled.map((point) => (
          <PointLine key={`${point.code} ${point.of}`} point={point} operation={operation} />
        ))}
      </ul>
      <p>{words.signing}</p>
    </Notice>
  )
}

/** What was called is proposed as a complication; only a tap of the surgeon ticks it. */
function Proposed({ operation, draft, onDraft }: Omit<Help, 'subject'> & { readonly operation: OperationOnFile }) {
  const { file } = useCaseView()
  const accounts = emergencyAccounts(file.theCase, operation.id)
  if (accounts.length === 0) return null
  const now = draftAt(draft, 'complications')
  const ticked = Array.isArray(now) ? now : []
  const procedure = procedureNamed(operation.procedure, procedures)
  const open = proposedComplications(accounts.map(({ shout }) => shout)).filter((code) => !ticked.includes(code))
  return (
    <Notice title={words.proposed}>
      <ul>
        {accounts.map((account) => (
          <li key={account.shout.begun.header.id}>{sayAccount(account, procedure).title}</li>
        ))}
      </ul>
      <p>{words.proposedHelp}</p>
      <p className="row">
        {open.map((code) => (
          <button
            key={code}
            type="button"
            onClick={() => onDraft(withDraftAt(draft, 'complications', [...ticked, code]))}
          >
            {fill(words.takeOver, { what: reportInEnglish.complications[code] })}
          </button>
        ))}
      </p>
    </Notice>
  )
}
