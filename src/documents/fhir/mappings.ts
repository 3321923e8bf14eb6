import type { KindName } from '#core/journal/fold.ts'
import { agreement } from './agreement.ts'
import type { Mapping } from './around.ts'
import { anaestheticAssessment } from './assessment.ts'
import { bloodTest, bloodType } from './blood.ts'
import { complication } from './complication.ts'
import { call, death, lateEvent, told } from './conversations.ts'
import { baseline, check, cytology, earFindings, twelveMonths } from './ear.ts'
import { estimate } from './estimate.ts'
import { imaging } from './imaging.ts'
import { discharge, drugGiven, medicineBefore, medicineChange } from './medicines.ts'
import { bloodLoss, booking, operationSummary } from './operation.ts'
import { otherEarPlan, skinPlan } from './plans.ts'
import { choice, ownerAnswer, ownerWishes, vetAnswer } from './questionnaire.ts'
import { historyItem, referral } from './referral.ts'
import { resultRead, specimen, specimenResult } from './specimens.ts'
import { measurements, weight } from './vital-signs.ts'
import { wardScore } from './ward.ts'

/**
 * Which kinds go into the bundle, and why the others do not: they are said elsewhere in it (`elsewhere`), or they are
 * the clinic's own record of how it works, which the journal keeps whole (`journal`). A kind without a line here
 * stays in the journal alone.
 */
export const mappings: { readonly [Name in KindName]?: Mapping<Name> | 'elsewhere' | 'journal' } = {
  agreement,
  'anaesthetic-assessment': anaestheticAssessment,
  'arrived-paper': 'journal',
  baseline,
  'blood-loss': bloodLoss,
  'blood-test': bloodTest,
  'blood-type': bloodType,
  booking,
  call,
  check,
  choice,
  complication,
  /** The consent itself says that it was rejected; who took it back, and why, stays with the clinic. */
  'consent-withdrawn': 'elsewhere',
  'cost-assumption': 'journal',
  'cost-so-far': 'journal',
  count: 'journal',
  cytology,
  death,
  discharge,
  'dose-policy': 'journal',
  'drug-given': drugGiven,
  'drug-wasted': 'journal',
  'ear-findings': earFindings,
  'emergency-declared': 'journal',
  erasure: 'journal',
  estimate,
  'history-item': historyItem,
  'breakpoint-edition': 'journal',
  'figures-approved': 'journal',
  'figures-left': 'journal',
  'report-erratum': 'journal',
  'report-frozen': 'journal',
  'house-policy': 'journal',
  household: 'elsewhere',
  identity: 'elsewhere',
  imaging,
  'laboratory-table': 'journal',
  'late-event': lateEvent,
  'late-sign': 'journal',
  'medicine-before': medicineBefore,
  'medicine-change': medicineChange,
  merge: 'elsewhere',
  note: 'journal',
  observation: measurements,
  'operation-summary': operationSummary,
  'other-ear-plan': otherEarPlan,
  'owner-answer': ownerAnswer,
  'owner-note': 'journal',
  'owner-reply': 'journal',
  'owner-wishes': ownerWishes,
  paper: 'journal',
  'pause-item': 'journal',
  photograph: 'journal',
  'planned-line': 'journal',
  'plate-drawing': 'journal',
  referral,
  refile: 'elsewhere',
  'register-line': 'journal',
  'result-read': resultRead,
  'second-check': 'journal',
  'shelf-item': 'journal',
  'side-settled': 'journal',
  'skin-plan': skinPlan,
  specimen,
  'specimen-result': specimenResult,
  'theatre-stamp': 'journal',
  told,
  'twelve-months': twelveMonths,
  'usual-plan': 'journal',
  'vet-answer': vetAnswer,
  'ward-score': wardScore,
  weight,
  withdrawal: 'elsewhere',
}
