import type { Trouble } from '#core/complications/trouble.ts'
import type { TroubleEvent } from '#core/complications/trouble-codes.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { NerveCourse } from '#core/nerve-course/nerve-course.ts'
import { type NerveOutcome, nerveVerdicts, type Verdict } from '#core/nerve-course/nerve-outcome.ts'
import { deathAroundOf, deepRecurrenceOf, resolvedOf, revisionOf } from './late-outcomes.ts'
import { daySince, isPastBlock, type OwnCase } from './own-case.ts'
import { type KnownOutcome, type OwnCountingRules, type OwnOutcome, ownOutcomes } from './own-outcome.ts'

export type KnownOutcomes = {
  readonly known: Readonly<Record<OwnOutcome, KnownOutcome>>
  /** Found in the animal, and with both ears operated of neither by itself: known of the animal, not of this ear. */
  readonly ofNoSide: readonly OwnOutcome[]
}

/**
 * What our own record knows of one operated ear. Face, Horner's, balance and cornea are those of the course of the nerve,
 * as the page of the case says it. Nothing is taken from silence: "no" needs a look that could have seen it.
 *
 * @param troubles every trouble after this operation; a death among them is read elsewhere
 * @example knownOutcomesOf(own, course, troublesAfter(own, rules, true), rules).known.facial_nerve_deficit_any // true
 */
export function knownOutcomesOf(
  own: OwnCase,
  course: Pick<NerveCourse, 'signs'>,
  troubles: readonly Trouble[],
  rules: OwnCountingRules,
): KnownOutcomes {
  const written = writtenTroubles(troubles)
  const of = (outcome: NerveOutcome) => nerveOutcome(course, outcome, written, own, rules)
  const [face, horner, balance, cornea] = [of('face'), of('horner'), of('balance'), of('cornea')]
  const has = (...events: readonly TroubleEvent[]) => written.filter(({ event }) => events.includes(event))
  const nerves = {
    facial_nerve_deficit_any: face.any,
    facial_nerve_deficit_permanent: face.lasting,
    horner_any: horner.any,
    horner_permanent: horner.lasting,
    vestibular_any: balance.any,
    vestibular_permanent: balance.lasting,
  } as const
  return {
    known: {
      facial_nerve_deficit_any: face.any.known,
      facial_nerve_deficit_permanent: face.lasting.known,
      horner_any: horner.any.known,
      horner_permanent: horner.lasting.known,
      vestibular_any: balance.any.known,
      vestibular_permanent: balance.lasting.known,
      corneal_ulcer: cornea.any.known,
      wound_infection_or_dehiscence:
        has('wound-gap', 'wound-infection').some(isEarly(own, rules)) || woundOf(own, rules),
      haemorrhage_intraop_any:
        has('haemorrhage').length > 0 || (own.summary?.complications.includes('bleeding') ?? null),
      perioperative_death: deathAroundOf(own, rules),
      deep_recurrence: has('deep-infection').length > 0 || deepRecurrenceOf(own, rules),
      revision_surgery: revisionOf(own, new Set(written.flatMap((one) => one.written ?? [])), rules),
      resolution_or_improved: resolvedOf(own, rules),
    },
    ofNoSide: ownOutcomes.filter((outcome) => outcome in nerves && nerves[outcome as keyof typeof nerves].ofNoSide),
  }
}

/** What a person wrote down as a trouble of this ear that was not there before, or is worse since. */
function writtenTroubles(troubles: readonly Trouble[]): Trouble[] {
  return troubles.filter(
    ({ written, unit, before, decision }) =>
      written !== null &&
      unit === 'ear' &&
      (before === 'absent' || before === 'milder') &&
      decision?.class !== 'was-there-before',
  )
}

function isEarly(own: OwnCase, { earlyUntilDay }: OwnCountingRules) {
  return ({ firstNoticed: { at } }: Trouble) => daySince(own, at) <= earlyUntilDay.value
}

const troubleOf = {
  face: 'facial-weakness',
  horner: 'horner',
  balance: 'vestibular',
  cornea: 'corneal-ulcer',
} as const satisfies Readonly<Record<NerveOutcome, TroubleEvent>>

/** What is known of the ear itself, and whether the animal has it and nobody can say of which ear. */
type Answer = { readonly known: KnownOutcome; readonly ofNoSide: boolean }

/** From the course of the nerve, and from what a person wrote down as a trouble: a look after that decides. */
function nerveOutcome(
  { signs }: Pick<NerveCourse, 'signs'>,
  outcome: NerveOutcome,
  written: readonly Trouble[],
  own: OwnCase,
  rules: OwnCountingRules,
): { readonly any: Answer; readonly lasting: Answer } {
  const { any, lasting, lastAt } = nerveVerdicts(signs, outcome, rules.earlyUntilDay.value)
  const noticed = written
    .filter(({ event }) => event === troubleOf[outcome])
    .map(({ firstNoticed: { at } }) => ({ at }))
    .filter(outcome === 'face' ? isPastBlock(own, rules) : () => true)
    .map(({ at }) => at)
    .sort(compareText)
  const last = noticed.at(-1)
  const decides = last !== undefined && (lastAt === null || last > lastAt)
  return {
    any: noticed.some((at) => daySince(own, at) <= rules.earlyUntilDay.value) ? happened : answerOf(any),
    lasting: !decides ? answerOf(lasting) : daySince(own, last) >= rules.lastingFromDay.value ? happened : unknown,
  }
}

const happened: Answer = { known: true, ofNoSide: false }
const unknown: Answer = { known: null, ofNoSide: false }

function answerOf(verdict: Verdict): Answer {
  switch (verdict) {
    case 'yes':
      return happened
    case 'no':
      return { known: false, ofNoSide: false }
    case 'not-known':
      return unknown
    case 'side-not-attributable':
      return { known: null, ofNoSide: true }
  }
}

function woundOf(own: OwnCase, { earlyUntilDay, woundFromDay }: OwnCountingRules): KnownOutcome {
  const early = own.checks.filter(({ at }) => daySince(own, at) <= earlyUntilDay.value)
  if (early.some(({ body }) => body.wound === 'gap' || body.wound === 'infected')) return true
  const closed = own.checks.some(({ at, body }) => body.wound === 'closed' && daySince(own, at) >= woundFromDay.value)
  return closed ? false : null
}
