// Written by scripts/write-indexes.mjs: sorted, one line per file.
// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.
import { agreement } from './agreement.ts'
import { anaestheticAssessment } from './anaesthetic-assessment.ts'
import { arrivedPaper } from './arrived-paper.ts'
import { baseline } from './baseline.ts'
import { bloodLoss } from './blood-loss.ts'
import { bloodTest } from './blood-test.ts'
import { bloodType } from './blood-type.ts'
import { booking } from './booking.ts'
import { breakpointEdition } from './breakpoint-edition.ts'
import { call } from './call.ts'
import { check } from './check.ts'
import { choice } from './choice.ts'
import { complication } from './complication.ts'
import { consentWithdrawn } from './consent-withdrawn.ts'
import { costAssumption } from './cost-assumption.ts'
import { costSoFar } from './cost-so-far.ts'
import { count } from './count.ts'
import { cytology } from './cytology.ts'
import { death } from './death.ts'
import { discharge } from './discharge.ts'
import { dosePolicy } from './dose-policy.ts'
import { drugGiven } from './drug-given.ts'
import { drugWasted } from './drug-wasted.ts'
import { earFindings } from './ear-findings.ts'
import { emergencyDeclared } from './emergency-declared.ts'
import { erasure } from './erasure.ts'
import { estimate } from './estimate.ts'
import { figuresApproved } from './figures-approved.ts'
import { figuresLeft } from './figures-left.ts'
import { historyItem } from './history-item.ts'
import { housePolicy } from './house-policy.ts'
import { household } from './household.ts'
import { identity } from './identity.ts'
import { imaging } from './imaging.ts'
import { incidentNote } from './incident-note.ts'
import { laboratoryTable } from './laboratory-table.ts'
import { lateEvent } from './late-event.ts'
import { lateSign } from './late-sign.ts'
import { medicineBefore } from './medicine-before.ts'
import { medicineChange } from './medicine-change.ts'
import { merge } from './merge.ts'
import { note } from './note.ts'
import { observation } from './observation.ts'
import { operationSummary } from './operation-summary.ts'
import { otherEarPlan } from './other-ear-plan.ts'
import { ownerAnswer } from './owner-answer.ts'
import { ownerNote } from './owner-note.ts'
import { ownerReply } from './owner-reply.ts'
import { ownerWishes } from './owner-wishes.ts'
import { paper } from './paper.ts'
import { pauseItem } from './pause-item.ts'
import { photograph } from './photograph.ts'
import { plannedLine } from './planned-line.ts'
import { plateDrawing } from './plate-drawing.ts'
import { referral } from './referral.ts'
import { refile } from './refile.ts'
import { registerLine } from './register-line.ts'
import { reportErratum } from './report-erratum.ts'
import { reportFrozen } from './report-frozen.ts'
import { resultRead } from './result-read.ts'
import { secondCheck } from './second-check.ts'
import { shelfItem } from './shelf-item.ts'
import { sideSettled } from './side-settled.ts'
import { skinPlan } from './skin-plan.ts'
import { specimen } from './specimen.ts'
import { specimenResult } from './specimen-result.ts'
import { theatreStamp } from './theatre-stamp.ts'
import { told } from './told.ts'
import { twelveMonths } from './twelve-months.ts'
import { usualPlan } from './usual-plan.ts'
import { vetAnswer } from './vet-answer.ts'
import { wardScore } from './ward-score.ts'
import { weight } from './weight.ts'
import { withdrawal } from './withdrawal.ts'

export const formWords = [
  agreement,
  anaestheticAssessment,
  arrivedPaper,
  baseline,
  bloodLoss,
  bloodTest,
  bloodType,
  booking,
  breakpointEdition,
  call,
  check,
  choice,
  complication,
  consentWithdrawn,
  costAssumption,
  costSoFar,
  count,
  cytology,
  death,
  discharge,
  dosePolicy,
  drugGiven,
  drugWasted,
  earFindings,
  emergencyDeclared,
  erasure,
  estimate,
  figuresApproved,
  figuresLeft,
  historyItem,
  housePolicy,
  household,
  identity,
  imaging,
  incidentNote,
  laboratoryTable,
  lateEvent,
  lateSign,
  medicineBefore,
  medicineChange,
  merge,
  note,
  observation,
  operationSummary,
  otherEarPlan,
  ownerAnswer,
  ownerNote,
  ownerReply,
  ownerWishes,
  paper,
  pauseItem,
  photograph,
  plannedLine,
  plateDrawing,
  referral,
  refile,
  registerLine,
  reportErratum,
  reportFrozen,
  resultRead,
  secondCheck,
  shelfItem,
  sideSettled,
  skinPlan,
  specimen,
  specimenResult,
  theatreStamp,
  told,
  twelveMonths,
  usualPlan,
  vetAnswer,
  wardScore,
  weight,
  withdrawal,
] as const
