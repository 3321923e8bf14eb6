import type { Side } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'

export const owedCodes = [
  'urgent-referral',
  'referral-waiting',
  'baseline-before-premedication',
  'weight-before-operation',
  'consent-before-operation',
  'second-check-of-lines',
  'second-name-for-emergency',
  'sign-out',
  'owner-about-emergency',
  'last-meal',
  'fasting-to-settle',
  'admission',
  'result-expected',
  'result-to-read',
  'result-to-decide',
  'owner-to-tell',
  'referring-vet-to-tell',
  'medicine-change-to-write',
  'owner-about-medicines',
  'carer-to-tell',
  'unfiled-to-hear',
  'told-to-put-right',
  'change-to-review',
  'first-call',
  'suture-check',
  'wound-check',
  'face-and-eye-look',
  'eye-at-risk-look',
  'look-after-the-block',
  'eye-lubricated',
  'recheck',
  'agreed-visit',
  'skin-plan',
  'other-ear-plan',
  'skin-plan-review',
  'other-ear-review',
  'pain-to-treat',
  'pain-again',
  'ward-pain',
  'ward-airway',
  'ward-temperature',
  'first-blink',
  'ward-food',
  'ward-urine',
  'ward-dose',
  'ward-owner-call',
  'twelve-months',
  'unknown-may-be-recorded',
  'late-sign-to-settle',
  'late-event-look',
  'late-event-decision',
  'outcome-again',
  'report-erratum',
  'owner-wishes-to-read',
  'vet-answer-to-read',
  'vet-death-to-confirm',
  'owner-note-to-answer',
  'owner-reported',
  'owner-reported-look',
  'owner-answer-to-read',
  'owner-about-costs',
  'estimate-to-answer',
  'conflict-to-settle',
  'pending-entry',
  'unknown-entry',
  'kept-aside',
  'policy-unreadable',
] as const
export type OwedCode = (typeof owedCodes)[number]

export const whyCodes = [
  'urgent-by-first-call',
  'spoken-not-seen',
  'nothing-after-first-call',
  'spoken-nothing-since',
  'days-after-operation',
  'on-day',
  'asked-every-time',
  'after-going-home',
  'month-check',
  'house-policy',
  'agreed-with-owner',
  'moved-narrowed',
  'moved-earlier',
  'moved-nowhere',
  'eye-without-blink',
  'weak-blink-eye-unseen',
  'tears-low',
  'cornea-stained',
  'blink-missing-before',
  'limit-two-weeks',
  'not-normal-yet',
  'not-assessed-yet',
  'possible-block-effect',
  'block-duration-unknown',
  'lubricate-how',
  'until-blink-returns',
  'tried-without-answer',
  'unknown-too-early',
  'status-from-nobody',
  'three-tries-done',
  'sutures-still-in',
  'laboratory-said',
  'usual-laboratory-time',
  'only-preliminary',
  'result-waits',
  'told-after-reading',
  'read-not-decided',
  'acted-read',
  'acted-told-owner',
  'acted-told-vet',
  'acted-changed',
  'result-taken-away',
  'carries-resistant',
  'hygiene-belongs',
  'change-decided',
  'medicines-changed',
  'carer-without-page',
  'taught-not-yet',
  'baseline-none',
  'baseline-blink-not-assessed',
  'weight-not-today',
  'no-agreement',
  'agreement-other-plan',
  'agreement-before-second-side',
  'agreement-changed',
  'consent-withdrawn',
  'lines-unchecked',
  'lines-disagree',
  'lines-voided',
  'lines-own-check',
  'emergency-was-declared',
  'tube-out-not-signed-out',
  'signed-out-in-doubt',
  'emergency-in-theatre',
  'fasting-grown',
  'fasting-young-or-small',
  'fasting-advice-differs',
  'fasting-exception',
  'fasting-unknown',
  'water-free',
  'admission-time-not-set',
  'plan-at-recheck',
  'review-set',
  'score-asks-for-relief',
  'score-again-set',
  'again-after-action',
  'ward-last',
  'ward-never',
  'not-scored-because',
  'watched-closely',
  'until-warm-and-sternal',
  'blink-not-seen-yet',
  'blink-still-absent',
  'wet-last',
  'wet-never',
  'wet-until-blink',
  'dose-every',
  'owner-waits',
  'owner-reached',
  'late-event-seen',
  'late-sign-told',
  'late-sign-unsure',
  'late-sign-not-looked',
  'late-event-after-status',
  'report-otherwise',
  'owner-wrote',
  'vet-answered',
  'vet-told-death',
  'owner-sent-note',
  'owner-answered',
  'owner-said-so',
  'owner-said-otherwise',
  'owner-wrote-in-answers',
  'costs-ask',
  'costs-may-pass',
  'costs-will-pass',
  'costs-passed',
  'costs-without-sum',
  'edition-unanswered',
  'side-by-side',
  'waits-for-entry',
  'from-newer-version',
  'same-id-other-bytes',
  'cannot-read-policy',
] as const
export type WhyCode = (typeof whyCodes)[number]

/** One reason, as code and values; content says it in a sentence. */
export type Why = { readonly code: WhyCode; readonly about: Readonly<Record<string, string>> }

export type OwedRole = 'surgeon' | 'nurse' | 'anaesthetist' | 'desk' | 'owner'

/** One thing that is owed: what, by whom, from when until when, and why. Late is worked out by the reader. */
export type OwedItem = {
  /** The same as long as the same thing is owed; calendar entries are named by it. */
  readonly id: string
  readonly what: OwedCode
  readonly about: Readonly<Record<string, string>>
  readonly who: OwedRole
  /** Id in the people register, when one person is meant. */
  readonly person: string | null
  /** `visit`: the animal is seen here. `here`: wherever the animal is. `home`: the owner does it. */
  readonly way: 'visit' | 'here' | 'call' | 'task' | 'home'
  readonly side: Side | null
  readonly operation: string | null
  /** UTC with milliseconds; for `precision: 'day'` the first and the last second of local days. */
  readonly dueFrom: string
  readonly dueBy: string
  readonly zone: string
  readonly precision: 'day' | 'minute'
  readonly why: readonly Why[]
  readonly facts: readonly Provenance[]
  /** Owed by or to the owner: ends when the animal has died. */
  readonly withOwner: boolean
  /** How often entries moved it; rises only. */
  readonly revision: number
}

/**
 * Why something is no longer owed. `settled-late`: done, after its limit. `too-late`: its moment has passed undone.
 * `overtaken`: a newer operation of the ear took its place. `not-needed`: there is nothing left to do it for.
 */
export type Ending = 'settled' | 'settled-late' | 'too-late' | 'overtaken' | 'not-needed' | 'death'

export type ClosedItem = { readonly item: OwedItem; readonly because: Ending; readonly by: string | null }

/** What is owed, and what was owed and is not any more: nothing goes silently. */
export type Owed = { readonly owed: readonly OwedItem[]; readonly closed: readonly ClosedItem[] }

/** An item with its end, when it has one. */
export type Draft = {
  readonly item: OwedItem
  readonly ended: { readonly because: Ending; readonly by: string | null } | null
}

/**
 * Late is a question of the reader's moment, never stored.
 *
 * @example isLate(item, '2026-03-20T09:00:00.000Z')
 */
export function isLate(item: Pick<OwedItem, 'dueBy'>, now: string): boolean {
  return Date.parse(now) > Date.parse(item.dueBy)
}

/** The ids of the sources behind an item, each once. */
export function sourceIdsOf(item: Pick<OwedItem, 'facts'>): string[] {
  return [...new Set(item.facts.flatMap((fact) => fact.sources))]
}
