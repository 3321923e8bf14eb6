import { type KindName, kindNamed } from '#core/journal/fold.ts'
import type { PersonRow } from '#core/journal/registers.ts'

export type Role = PersonRow['role']

/** Everybody who works here. Whoever may only read, writes nothing. */
const staff = ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'] as const
/** Whoever stands at the animal: what was done and seen can always be recorded by whoever did and saw it. */
const atTheAnimal = ['surgeon', 'nurse', 'anaesthetist'] as const
const surgeonOnly = ['surgeon'] as const
/** Also whoever stands in for the surgeon: a result does not wait for the end of a leave. */
const reads = ['surgeon', 'anaesthetist'] as const
const doses = ['surgeon', 'anaesthetist', 'manager'] as const

/**
 * Who may write which kind of entry. A decision belongs to whoever answers for it (choice, agreement, summary, result
 * read: the surgeon), what the house holds to whoever answers for the house, an observation to whoever made it, and
 * what comes by post, telephone or counter to everybody.
 */
export const mayWrite = {
  agreement: surgeonOnly,
  'anaesthetic-assessment': atTheAnimal,
  'arrived-paper': staff,
  baseline: atTheAnimal,
  'blood-loss': atTheAnimal,
  'blood-test': atTheAnimal,
  'blood-type': atTheAnimal,
  booking: staff,
  'breakpoint-edition': ['surgeon', 'manager'],
  call: staff,
  check: atTheAnimal,
  choice: surgeonOnly,
  complication: atTheAnimal,
  /** Whoever picks up the telephone at ten to eight. */
  'consent-withdrawn': staff,
  'cost-assumption': staff,
  'cost-so-far': staff,
  count: atTheAnimal,
  cytology: atTheAnimal,
  /** An owner may tell it on the telephone; from then on nobody may ask that owner anything. */
  death: staff,
  discharge: ['surgeon', 'nurse'],
  'dose-policy': doses,
  'drug-given': atTheAnimal,
  'drug-wasted': atTheAnimal,
  'ear-findings': atTheAnimal,
  'emergency-declared': atTheAnimal,
  erasure: ['manager'],
  estimate: ['surgeon', 'nurse', 'desk', 'manager'],
  'figures-approved': ['surgeon', 'manager'],
  'figures-left': ['surgeon', 'manager'],
  'report-erratum': ['surgeon', 'manager'],
  'report-frozen': ['surgeon', 'manager'],
  'history-item': staff,
  'house-policy': ['surgeon', 'manager'],
  household: staff,
  identity: staff,
  imaging: atTheAnimal,
  /** Whoever saw it: a near miss that only some may write is a near miss nobody hears of. */
  'incident-note': staff,
  /** Whoever takes the results in. */
  'laboratory-table': staff,
  /** The front desk hears of it first, and an ear that nobody may re-open is a tract filed as a new case. */
  'late-event': staff,
  'late-sign': staff,
  'medicine-before': staff,
  'medicine-change': reads,
  merge: staff,
  note: staff,
  observation: atTheAnimal,
  'operation-summary': surgeonOnly,
  'other-ear-plan': surgeonOnly,
  'owner-answer': staff,
  'owner-note': staff,
  /** Whoever answers signs with their own name; the desk may say that somebody will phone. */
  'owner-reply': staff,
  'owner-wishes': staff,
  paper: staff,
  'pause-item': atTheAnimal,
  photograph: staff,
  'planned-line': atTheAnimal,
  'plate-drawing': atTheAnimal,
  referral: staff,
  refile: staff,
  'register-line': [...atTheAnimal, 'manager'],
  'result-read': reads,
  'second-check': atTheAnimal,
  'shelf-item': [...atTheAnimal, 'manager'],
  'side-settled': surgeonOnly,
  'skin-plan': surgeonOnly,
  specimen: atTheAnimal,
  'specimen-result': staff,
  'theatre-stamp': atTheAnimal,
  told: staff,
  'twelve-months': ['surgeon', 'nurse'],
  'usual-plan': doses,
  /** Whoever picks up the telephone. */
  'vet-answer': staff,
  'ward-score': atTheAnimal,
  weight: staff,
  /** Taking back needs besides that one may write the kind that is taken back. */
  withdrawal: staff,
} as const satisfies Record<KindName, readonly Role[]>

/**
 * Who may write a kind, by its name as it stands in an entry. A kind of a newer program is kept from everybody who
 * works here.
 *
 * @example writersOf('agreement') // ['surgeon']
 */
export function writersOf(kind: string): readonly Role[] {
  const known = kindNamed(kind)
  return known ? mayWrite[known.name as KindName] : staff
}
