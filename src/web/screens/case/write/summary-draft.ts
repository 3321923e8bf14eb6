import { eyeAfterNerve } from '#content/follow-up/eye-after-nerve.ts'
import { procedures } from '#content/procedures/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { draftAt } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import type { DraftNow } from '#core/forms/drafted.ts'
import type { Place } from '#core/forms/refusal.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { draftSummary } from '#core/theatre/draft-summary.ts'
import { markName } from '#core/theatre/mark-name.ts'
import { draftedAnswers } from '#documents/operation-report/draft-words.ts'
import { formFor } from '../../../forms/forms.ts'

const kind = 'operation-summary'
const facts = { swabs: bloodInSwabs, marks: reportInEnglish, eyeAfterNerve }

/** The fields of a summary that are drafted; complications, assistant, remark and signature are a person's alone. */
const fields = [
  'side',
  'procedure',
  'incisionAt',
  'closedAt',
  'surgeon',
  'anaesthetist',
  'indication',
  'findings',
  'drain',
  'plan',
] as const satisfies readonly (keyof BodyOf<typeof kind>)[]

/** What can be drafted now for the form of an operation's summary, and at what two entries stand side by side. */
export function summaryDraft(
  file: CaseFile,
  operation: OperationOnFile,
  place: Place,
): { readonly now: DraftNow; readonly unsettled: readonly string[] } {
  const procedure = procedureNamed(operation.procedure, procedures)
  const draft = draftSummary(file, operation, procedure, facts)
  const answers = draftedAnswers(draft, { procedure, side: operation.side, zone: file.clinic.zone })
  const typed = draftOf(formFor(kind), answers as BodyOf<typeof kind>, place)
  const titles = new Map<string, string>(procedure.checkpoints.map(({ id, title }) => [id, title]))
  return {
    now: Object.fromEntries(fields.map((field) => [field, draftAt(typed, field) ?? ''])),
    unsettled: draft.unsettled.map((id) => titles.get(id) ?? markName(id, reportInEnglish) ?? id),
  }
}
