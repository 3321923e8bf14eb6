import type { KindName } from '#core/journal/fold.ts'
import { type OwedCode, owedCodes } from './owed-item.ts'

/** The first word of an owed id where it is not the code itself. */
const byFirstWord: Readonly<Record<string, OwedCode>> = {
  result: 'result-expected',
  face: 'face-and-eye-look',
  eye: 'eye-at-risk-look',
  block: 'look-after-the-block',
  lubricate: 'eye-lubricated',
  'wound-week-4': 'wound-check',
  'recheck-4-to-6-weeks': 'recheck',
  'recheck-3-months': 'recheck',
  'recheck-6-months': 'recheck',
}

/**
 * The code of an owed row, from its id: the row of a list keeps the sentence, not the code. Undefined for a row that no
 * rule of owing made, like a file that cannot be read.
 *
 * @example owedCodeOf('face:operation-1:LEFT:day-3') // 'face-and-eye-look'
 */
export function owedCodeOf(id: string): OwedCode | undefined {
  const word = id.split(':')[0] ?? ''
  return byFirstWord[word] ?? owedCodes.find((code) => code === word)
}

/** What is done and looked at again and again while an animal lies in the ward: it stands on the ward's own list. */
export const wardRounds = [
  'ward-pain',
  'ward-airway',
  'ward-temperature',
  'first-blink',
  'ward-food',
  'ward-urine',
  'ward-dose',
  'ward-owner-call',
] as const satisfies readonly OwedCode[]

/** Everything that belongs on the list of the ward, besides what it shares with the rest of the course. */
export const wardCodes: readonly OwedCode[] = [
  ...wardRounds,
  'pain-to-treat',
  'pain-again',
  'look-after-the-block',
  'eye-lubricated',
  'face-and-eye-look',
  'eye-at-risk-look',
]

/**
 * Whether an owed row is one of the rounds of the ward.
 *
 * @example isWardRound('ward-pain:operation-1:entry-1') // true
 */
export function isWardRound(id: string): boolean {
  return (wardRounds as readonly (OwedCode | undefined)[]).includes(owedCodeOf(id))
}

/**
 * The kind of entry that settles each owed thing; null where it is settled otherwise: at its own page (conflicts,
 * entries kept aside), by time, or by what arrives.
 */
export const settledBy = {
  'urgent-referral': 'ear-findings',
  'referral-waiting': 'call',
  'baseline-before-premedication': 'baseline',
  'weight-before-operation': 'weight',
  'consent-before-operation': 'agreement',
  'second-check-of-lines': 'second-check',
  'second-name-for-emergency': 'second-check',
  'sign-out': 'theatre-stamp',
  'owner-about-emergency': 'told',
  'last-meal': null,
  'fasting-to-settle': 'identity',
  admission: null,
  'result-expected': 'specimen-result',
  'result-to-read': 'result-read',
  'result-to-decide': 'result-read',
  'owner-to-tell': 'told',
  'referring-vet-to-tell': 'told',
  'medicine-change-to-write': 'medicine-change',
  'owner-about-medicines': 'told',
  'carer-to-tell': 'told',
  'unfiled-to-hear': 'withdrawal',
  'told-to-put-right': 'told',
  'change-to-review': 'medicine-change',
  'first-call': 'call',
  'suture-check': 'check',
  'wound-check': 'check',
  'face-and-eye-look': 'check',
  'eye-at-risk-look': 'check',
  'look-after-the-block': 'check',
  'eye-lubricated': 'check',
  recheck: 'check',
  'agreed-visit': 'check',
  'skin-plan': 'skin-plan',
  'other-ear-plan': 'other-ear-plan',
  'skin-plan-review': 'skin-plan',
  'other-ear-review': 'other-ear-plan',
  'pain-to-treat': 'ward-score',
  'pain-again': 'ward-score',
  'ward-pain': 'ward-score',
  'ward-airway': 'ward-score',
  'ward-temperature': 'observation',
  'first-blink': 'ward-score',
  'ward-food': 'ward-score',
  'ward-urine': 'ward-score',
  'ward-dose': 'drug-given',
  'ward-owner-call': 'call',
  'twelve-months': 'twelve-months',
  'unknown-may-be-recorded': 'twelve-months',
  'late-sign-to-settle': 'late-sign',
  'late-event-look': 'check',
  'late-event-decision': 'late-event',
  'outcome-again': 'twelve-months',
  'report-erratum': null,
  'owner-wishes-to-read': 'call',
  'vet-answer-to-read': 'note',
  'vet-death-to-confirm': 'death',
  'owner-note-to-answer': 'owner-reply',
  'owner-reported': 'call',
  'owner-reported-look': 'check',
  'owner-answer-to-read': 'call',
  'owner-about-costs': 'call',
  'estimate-to-answer': 'estimate',
  'conflict-to-settle': null,
  'pending-entry': null,
  'unknown-entry': null,
  'kept-aside': null,
  'policy-unreadable': 'house-policy',
} as const satisfies Record<OwedCode, KindName | null>
