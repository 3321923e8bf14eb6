import type { OwedRisks } from '#core/owed/sort.ts'
import { commonPractice, houseJudgementOnly } from './provenance.ts'

const house = { ...houseJudgementOnly, where: 'the order of what is owed' } as const
const eye = {
  value: 'harm',
  sources: ['eye-care-texts', 'house-judgement'],
  where: 'an eye that does not close ulcerates within days; that it leads the list is the house’s',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const
const before = { value: 'before-the-cut', ...commonPractice, where: 'settled before anaesthesia' } as const
const result = { value: 'result', ...commonPractice, where: 'a result that nobody reads during leave' } as const
const followUp = { value: 'follow-up', ...house } as const
const record = { value: 'record', ...house } as const

/** What is lost while an owed thing waits. The classes and their order are a house judgement where nobody else speaks. */
export const owedRisks = {
  'urgent-referral': { value: 'harm', ...house },
  'referral-waiting': followUp,
  'baseline-before-premedication': before,
  'weight-before-operation': before,
  'consent-before-operation': before,
  'second-check-of-lines': before,
  'second-name-for-emergency': followUp,
  'sign-out': { value: 'harm', ...house },
  'owner-about-emergency': followUp,
  'last-meal': before,
  'fasting-to-settle': before,
  admission: before,
  'result-expected': result,
  'result-to-read': result,
  'owner-to-tell': result,
  'referring-vet-to-tell': result,
  'first-call': followUp,
  'suture-check': followUp,
  'wound-check': followUp,
  'face-and-eye-look': followUp,
  'eye-at-risk-look': eye,
  'look-after-the-block': eye,
  'eye-lubricated': eye,
  recheck: followUp,
  'agreed-visit': followUp,
  'skin-plan': followUp,
  'other-ear-plan': followUp,
  'skin-plan-review': followUp,
  'other-ear-review': followUp,
  'pain-to-treat': { value: 'harm', ...house },
  'pain-again': { value: 'harm', ...house },
  'ward-pain': { value: 'harm', ...house },
  'ward-airway': { value: 'harm', ...house },
  'ward-temperature': { value: 'harm', ...house },
  'first-blink': eye,
  'ward-food': followUp,
  'ward-urine': followUp,
  'ward-dose': { value: 'harm', ...house },
  'ward-owner-call': followUp,
  'twelve-months': followUp,
  'unknown-may-be-recorded': record,
  'late-event-look': { value: 'harm', ...house },
  'late-event-decision': { value: 'harm', ...house },
  'outcome-again': followUp,
  'owner-wishes-to-read': followUp,
  'owner-about-costs': followUp,
  'estimate-to-answer': followUp,
  'conflict-to-settle': { value: 'before-the-cut', ...house },
  'pending-entry': record,
  'unknown-entry': record,
  'kept-aside': record,
  'policy-unreadable': record,
} as const satisfies OwedRisks
