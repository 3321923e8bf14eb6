import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { redFlags } from '#core/journal/kinds/referral.ts'
import { never } from '#core/outcome/outcome.ts'

export type RedFlag = (typeof redFlags)[number]
export type Urgency = BodyOf<'referral'>['urgency']

/** What is asked at the first call. What nobody asked is `not-asked`, never "no". */
export type TriageAnswers = {
  readonly signs: readonly { readonly sign: RedFlag; readonly answer: 'yes' | 'no' | 'not-asked' }[]
  readonly drugAllergy: 'yes' | 'no' | 'not-asked'
  readonly flatFace: 'yes' | 'no' | 'unknown'
  readonly mayFetchRecords: 'yes' | 'no' | 'not-asked'
}

/**
 * The answers as an entry of the first call keeps them, with what is known of the animal; null answers nothing.
 *
 * @example triage(answersOf(referral.body, identity?.body ?? null), triageRules)
 */
export function answersOf(
  referral: BodyOf<'referral'>,
  identity: Pick<BodyOf<'identity'>, 'flatFace'> | null,
): TriageAnswers {
  return {
    signs: referral.signs,
    drugAllergy: referral.drugAllergy.answer,
    flatFace: identity?.flatFace ?? 'unknown',
    mayFetchRecords: referral.mayFetchRecords,
  }
}

export type TriageRules = {
  /** How soon an animal with this sign is seen, and why in a sentence. */
  readonly signs: Readonly<Record<RedFlag, Sourced<{ readonly urgency: Urgency; readonly because: string }>>>
  /** Said beside a nerve sign, or where one was not asked about, in a flat-faced animal. */
  readonly flatFaced: Sourced<string>
  readonly nerveSigns: readonly RedFlag[]
}

/** Something to ask before the call ends, the most urgent first. */
export type AskNow =
  | { readonly kind: 'sign'; readonly sign: RedFlag; readonly could: Urgency }
  | { readonly kind: 'drug-allergy' | 'flat-face' | 'may-fetch-records' }

export type TriageReason =
  | { readonly kind: 'sign'; readonly sign: RedFlag; readonly fact: TriageRules['signs'][RedFlag] }
  | { readonly kind: 'flat-faced'; readonly fact: Sourced<string> }
  | { readonly kind: 'no-red-flag' }

export type Triage = {
  /** The signs answered "yes". */
  readonly redFlags: readonly RedFlag[]
  /** Null while an answer that is still open could make it more urgent. */
  readonly suggested: Urgency | null
  /** At least so urgent by what was answered. */
  readonly atLeast: Urgency
  readonly because: readonly TriageReason[]
  readonly askNow: readonly AskNow[]
}

const rank: Readonly<Record<Urgency, number>> = { today: 0, 'this-week': 1, routine: 2 }

function sooner(a: Urgency, b: Urgency): Urgency {
  return rank[a] <= rank[b] ? a : b
}

/**
 * How urgent the answers make it, with the reason of every red flag and what to ask now. An unknown answer never makes
 * it less urgent: while one is open that could, nothing is suggested, only the least it is.
 *
 * @example triage({ signs: [{ sign: 'head-tilt', answer: 'yes' }], … }, rules).suggested // 'today'
 * Reference: the red flags of the first call; how soon each is seen is a house judgement (content/follow-up/triage-rules.ts).
 */
export function triage(answers: TriageAnswers, rules: TriageRules): Triage {
  const answerOf = (sign: RedFlag) => answers.signs.find((one) => one.sign === sign)?.answer ?? 'not-asked'
  const flags = redFlags.filter((sign) => answerOf(sign) === 'yes')
  const urgencyOf = (sign: RedFlag) => rules.signs[sign].value.urgency
  const atLeast = flags.map(urgencyOf).reduce(sooner, 'routine' as Urgency)
  const open = redFlags
    .filter((sign) => answerOf(sign) === 'not-asked')
    .sort((a, b) => rank[urgencyOf(a)] - rank[urgencyOf(b)])
  const undecided = open.some((sign) => rank[urgencyOf(sign)] < rank[atLeast])
  const nerve = rules.nerveSigns.some((sign) => answerOf(sign) !== 'no')
  const reasons: TriageReason[] = [
    ...flags
      .sort((a, b) => rank[urgencyOf(a)] - rank[urgencyOf(b)])
      .map((sign): TriageReason => ({ kind: 'sign', sign, fact: rules.signs[sign] })),
    ...(answers.flatFace === 'yes' && nerve ? [{ kind: 'flat-faced' as const, fact: rules.flatFaced }] : []),
    ...(flags.length === 0 && !undecided ? [{ kind: 'no-red-flag' as const }] : []),
  ]
  return {
    redFlags: redFlags.filter((sign) => flags.includes(sign)),
    suggested: undecided ? null : atLeast,
    atLeast,
    because: reasons,
    askNow: [
      ...open.map((sign): AskNow => ({ kind: 'sign', sign, could: urgencyOf(sign) })),
      ...(answers.drugAllergy === 'not-asked' ? [{ kind: 'drug-allergy' as const }] : []),
      ...(answers.flatFace === 'unknown' ? [{ kind: 'flat-face' as const }] : []),
      ...(answers.mayFetchRecords === 'not-asked' ? [{ kind: 'may-fetch-records' as const }] : []),
    ],
  }
}

export type UrgencyStanding = {
  /** What is written down: always what the person chose, once they chose. */
  readonly urgency: Urgency | null
  /** `asked`: a person chose other than suggested, and says why. `open`: nobody chose and nothing can be suggested. */
  readonly reason: 'not-needed' | 'asked' | 'open'
  readonly compared: 'as-suggested' | 'sooner' | 'later' | 'nothing-suggested'
}

/**
 * What stands as urgency: a person's choice is never lowered or lifted by later answers; one that differs from the
 * suggestion, or is later than what the answers already ask for, wants a reason.
 *
 * @example urgencyStanding('routine', triage(answers, rules)) // { urgency: 'routine', reason: 'asked', compared: 'later' }
 */
export function urgencyStanding(chosen: Urgency | null, { suggested, atLeast }: Triage): UrgencyStanding {
  if (chosen === null) {
    return suggested === null
      ? { urgency: null, reason: 'open', compared: 'nothing-suggested' }
      : { urgency: suggested, reason: 'not-needed', compared: 'as-suggested' }
  }
  if (chosen === suggested) return { urgency: chosen, reason: 'not-needed', compared: 'as-suggested' }
  if (rank[chosen] > rank[suggested ?? atLeast]) return { urgency: chosen, reason: 'asked', compared: 'later' }
  if (suggested === null) return { urgency: chosen, reason: 'asked', compared: 'nothing-suggested' }
  return { urgency: chosen, reason: 'asked', compared: 'sooner' }
}

/**
 * The reasons as one text for the entry, which the person may change.
 *
 * @example sayBecause(triage(answers, rules), wording) // 'Head tilt: …'
 */
export function sayBecause(
  { because }: Pick<Triage, 'because'>,
  wording: { readonly signs: Readonly<Record<RedFlag, string>>; readonly noRedFlag: string },
): string {
  return because
    .map((reason) => {
      switch (reason.kind) {
        case 'sign':
          return `${wording.signs[reason.sign]}: ${reason.fact.value.because}`
        case 'flat-faced':
          return reason.fact.value
        case 'no-red-flag':
          return wording.noRedFlag
        default:
          return never(reason)
      }
    })
    .join(' ')
}
