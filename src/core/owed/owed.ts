import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { owedAfterTheatre } from './after-theatre.ts'
import { owedBefore } from './before-operation.ts'
import { owedToCarer } from './carer.ts'
import { owedAtTheDesk } from './desk.ts'
import { owedAfterEmergencies } from './emergencies.ts'
import { owedFaceAndEye, owedOtherEye } from './face-and-eye.ts'
import { type DoneOperation, owedFollowUp } from './follow-up.ts'
import { withHygiene } from './hygiene.ts'
import { owedAfterLateEvents } from './late-events.ts'
import { owedAfterLateSigns } from './late-signs.ts'
import { owedMedicineChanges } from './medicine-changes.ts'
import type { OperationOnFile } from './operations.ts'
import type { ClosedItem, Draft, Owed, OwedItem } from './owed-item.ts'
import { owedAfterNotes } from './owner-notes.ts'
import { owedAfterWishes } from './owner-wishes.ts'
import { owedPlanReviews } from './plan-reviews.ts'
import { owedAfterAnswers } from './questionnaires.ts'
import { owedAfterReferrals } from './referrals.ts'
import { owedResults } from './results.ts'
import { owedAsCostsRise } from './rising-costs.ts'
import { type OwedOptions, type Setting, settingOf } from './setting.ts'
import { owedAtTwelveMonths } from './twelve-months.ts'
import { owedAfterUnfiling } from './unfiled.ts'
import { owedAfterVetAnswers } from './vet-answers.ts'
import { owedInWard } from './ward.ts'

/**
 * Everything that is owed in one case, earliest limit first, and what is no longer owed with the reason: made from the
 * entries, the procedure's own intervals and the house policy, never stored by hand. An item vanishes when the entry
 * that settles it exists. Death ends what is owed by or to the owner; a laboratory result is still read by us.
 *
 * @example const { owed, closed } = owedOf(file, procedures, { rules: owedRules })
 */
export function owedOf(file: CaseFile, procedures: readonly Procedure[], options: OwedOptions): Owed {
  const setting = settingOf(file, procedures, options)
  const drafts = [
    ...owedAfterReferrals(setting),
    ...setting.operations.flatMap((operation) => ofOperation(operation, setting)),
    ...owedResults(setting),
    ...owedMedicineChanges(setting),
    ...owedToCarer(setting),
    ...owedAfterUnfiling(setting),
    ...owedAfterLateEvents(setting),
    ...owedAfterLateSigns(setting),
    ...owedPlanReviews(setting),
    ...owedInWard(setting),
    ...owedAfterEmergencies(setting),
    ...owedAfterWishes(setting),
    ...owedAfterVetAnswers(setting),
    ...owedAfterNotes(setting),
    ...owedAfterAnswers(setting),
    ...owedAsCostsRise(setting),
    ...owedAtTheDesk(setting),
  ].map((draft) => afterDeath(draft, file))
  const said = options.hygiene ? withHygiene(drafts, file, options.hygiene) : drafts
  const owed = said.flatMap(({ item, ended }) => (ended ? [] : [item]))
  const closed = said.flatMap(({ item, ended }): ClosedItem[] => (ended ? [{ item, ...ended }] : []))
  return { owed: owed.sort(byLimit), closed: closed.sort((a, b) => byLimit(a.item, b.item)) }
}

function byLimit(a: OwedItem, b: OwedItem): number {
  return compareText(a.dueBy, b.dueBy) || compareText(a.dueFrom, b.dueFrom) || compareText(a.id, b.id)
}

function ofOperation(operation: OperationOnFile, setting: Setting): Draft[] {
  const before = [...owedBefore(operation, setting), ...owedAfterTheatre(operation, setting)]
  if (!operation.done && setting.options.plannedCountsAs !== 'done') return before
  const done: DoneOperation = {
    ...operation,
    dayOfOperation: dayOf({ at: operation.moment.at, zone: setting.zone }),
  }
  const visits = [...owedFollowUp(done, setting), ...owedFaceAndEye(done, setting), ...owedOtherEye(done, setting)]
  return [
    ...before,
    ...visits.map((draft) => overtaken(draft, operation, setting)),
    ...owedAtTwelveMonths(done, setting),
  ]
}

/** A newer operation of the same ear brings its own visits: those of the older one that fall after it end. */
function overtaken(draft: Draft, operation: OperationOnFile, setting: Setting): Draft {
  const newer = setting.operations.find(
    ({ side, done, moment }) => done && side === operation.side && moment.at > operation.moment.at,
  )
  if (draft.ended || !newer?.done || draft.item.dueBy < newer.moment.at) return draft
  return { item: draft.item, ended: { because: 'overtaken', by: newer.done.by } }
}

function afterDeath(draft: Draft, file: CaseFile): Draft {
  const death = file.theCase.latest('death')
  if (!death || draft.ended || !draft.item.withOwner) return draft
  return { item: draft.item, ended: { because: 'death', by: death.header.id } }
}
