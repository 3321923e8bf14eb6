import type { Trouble } from '#core/complications/trouble.ts'
import type { TroubleEvent } from '#core/complications/trouble-codes.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { daySince, deepEvents, isPastBlock, type OwnCase } from './own-case.ts'
import type { OwnCountingRules, OwnOutcome } from './own-outcome.ts'

/** What one look says of one sign: new or worse than before the operation, not so, or nothing. */
type Look = { readonly at: string; readonly worse: boolean }
/** Whether an outcome happened to this ear; null is not known, and is never "no". */
export type KnownOutcome = boolean | null

/**
 * What our own record knows of one operated ear. A sign counts when it is new or worse than on the baseline; one that
 * was seen without a baseline is not known. Nothing is taken from silence: "no" needs a look that could have seen it.
 *
 * @param troubles every trouble after this operation; a death among them is read elsewhere
 * @example knownOutcomesOf(ownCase, troublesAfter(ownCase, rules, true), rules).facial_nerve_deficit_any // true
 */
export function knownOutcomesOf(
  own: OwnCase,
  troubles: readonly Trouble[],
  rules: OwnCountingRules,
): Readonly<Record<OwnOutcome, KnownOutcome>> {
  const written = writtenTroubles(troubles)
  const and = (looks: readonly Look[], event: TroubleEvent) => inOrder([...looks, ...troubleLooks(written, event)])
  const face = and(faceLooks(own, rules), 'facial-weakness').filter(isPastBlock(own, rules))
  const horner = and(hornerLooks(own), 'horner')
  const balance = and(balanceLooks(own), 'vestibular')
  const has = (...events: readonly TroubleEvent[]) => written.filter(({ event }) => events.includes(event))
  return {
    facial_nerve_deficit_any: anyOf(face, own, rules),
    facial_nerve_deficit_permanent: lastingOf(face, own, rules),
    horner_any: anyOf(horner, own, rules),
    horner_permanent: lastingOf(horner, own, rules),
    vestibular_any: anyOf(balance, own, rules),
    vestibular_permanent: lastingOf(balance, own, rules),
    corneal_ulcer: anyOf(and(ulcerLooks(own), 'corneal-ulcer'), own, rules),
    wound_infection_or_dehiscence: has('wound-gap', 'wound-infection').some(isEarly(own, rules)) || woundOf(own, rules),
    haemorrhage_intraop_any: has('haemorrhage').length > 0 || (own.summary?.complications.includes('bleeding') ?? null),
    perioperative_death: deathOf(own, rules),
    deep_recurrence: has('deep-infection').length > 0 || deepOf(own, rules),
    revision_surgery: has('deep-infection', 'wound-infection').some(wasOperated) || revisionOf(own, rules),
    resolution_or_improved: resolvedOf(own),
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

function troubleLooks(written: readonly Trouble[], event: TroubleEvent): Look[] {
  return written.filter((one) => one.event === event).map(({ firstNoticed: { at } }) => ({ at, worse: true }))
}

function isEarly(own: OwnCase, { earlyUntilDay }: OwnCountingRules) {
  return ({ firstNoticed: { at } }: Trouble) => daySince(own, at) <= earlyUntilDay.value
}

function wasOperated({ needed }: Trouble): boolean {
  return (
    needed === 'some-operation' || needed === 'intervention-sedation' || needed === 'intervention-general-anaesthesia'
  )
}

const grades = { normal: 0, weak: 1, absent: 2 } as const

type Blink = keyof typeof grades | 'not-assessed'

/** One look at the blink against the baseline of the same side; none where nobody looked, or nothing was known before. */
export function blinkLook(at: string, now: Blink, before: Blink | undefined): Look[] {
  if (now === 'not-assessed') return []
  if (grades[now] === 0) return [{ at, worse: false }]
  if (before === undefined || before === 'not-assessed') return []
  return [{ at, worse: grades[now] > grades[before] }]
}

/** Looks at the blink beside the checks: of rounds in the ward, and of the answers after a year. */
export function blinkBesideChecks(own: OwnCase, rules: OwnCountingRules): Look[] {
  const { side } = own.operation
  const before = own.baseline?.[side].blink
  const rounds = own.rounds.filter(isPastBlock(own, rules))
  return [
    ...rounds.flatMap(({ at, body }) => blinkLook(at, body[side].blink, before)),
    ...own.statuses.flatMap(({ at, body }) => {
      // An owner who says that the face is normal has not graded a nerve.
      const isGraded = body.face !== 'unknown' && !(body.source === 'owner' && body.face === 'normal')
      return isGraded ? blinkLook(at, body.face as Blink, before) : []
    }),
  ]
}

/** Blink and droop of the operated side against the baseline of the same side. A possible block effect is no look. */
function faceLooks(own: OwnCase, rules: OwnCountingRules): Look[] {
  const before = own.baseline?.[own.operation.side]
  const checked = own.checks.filter(isPastBlock(own, rules)).flatMap(({ at, body }) => {
    if (body.possibleBlockEffect) return []
    return together(at, [
      ...blinkLook(at, body.blink, before?.blink),
      ...signLook(at, body.lipOrEarDroop, before?.lipOrEarDroop ?? 'not-assessed'),
    ])
  })
  return inOrder([...checked, ...blinkBesideChecks(own, rules)])
}

/** Horner's before the operation, from pupil and third eyelid; free of it only where both were looked at. */
export function hornerBefore(face: Pick<Baseline['LEFT'], 'pupil' | 'thirdEyelidUp'> | undefined): Sign {
  if (!face) return 'not-assessed'
  if (face.pupil === 'small' || face.thirdEyelidUp === 'yes') return 'yes'
  return face.pupil === 'not-assessed' || face.thirdEyelidUp === 'not-assessed' ? 'not-assessed' : 'no'
}

/** Balance before the operation, from tilt, eye movements and gait; free only where all were looked at. */
export function balanceBefore(before: Pick<Baseline, 'headTilt' | 'nystagmus' | 'unsteady'> | undefined): Sign {
  if (!before) return 'not-assessed'
  const signs = [before.headTilt === 'none' ? 'no' : before.headTilt, before.nystagmus, before.unsteady]
  if (signs.some((sign) => sign !== 'no' && sign !== 'not-assessed')) return 'yes'
  return signs.every((sign) => sign === 'no') ? 'no' : 'not-assessed'
}

function hornerLooks(own: OwnCase): Look[] {
  const before = hornerBefore(own.baseline?.[own.operation.side])
  return own.checks.flatMap(({ at, body }) => signLook(at, body.horner, before))
}

function balanceLooks(own: OwnCase): Look[] {
  const before = balanceBefore(own.baseline ?? undefined)
  return own.checks.flatMap(({ at, body }) => signLook(at, body.headTilt, before))
}

function ulcerLooks(own: OwnCase): Look[] {
  const before = own.baseline?.[own.operation.side].fluorescein ?? 'not-assessed'
  const said = { positive: 'yes', negative: 'no', 'not-assessed': 'not-assessed' } as const
  return own.checks.flatMap(({ at, body }) => signLook(at, said[body.fluorescein], said[before]))
}

type Sign = 'yes' | 'no' | 'not-assessed'
type Baseline = BodyOf<'baseline'>

/** A sign that is there now is worse only where it is known not to have been there before. */
function signLook(at: string, now: Sign, before: Sign): Look[] {
  if (now === 'not-assessed') return []
  if (now === 'no') return [{ at, worse: false }]
  return before === 'not-assessed' ? [] : [{ at, worse: before === 'no' }]
}

/** Two signs of one look: worse when one is worse, free of it only when both were looked at. */
function together(at: string, looks: readonly Look[]): Look[] {
  if (looks.some(({ worse }) => worse)) return [{ at, worse: true }]
  return looks.length === 2 ? [{ at, worse: false }] : []
}

export function inOrder(looks: readonly Look[]): Look[] {
  return [...looks].sort((a, b) => compareText(a.at, b.at))
}

function anyOf(looks: readonly Look[], own: OwnCase, { earlyUntilDay }: OwnCountingRules): KnownOutcome {
  const early = looks.filter(({ at }) => daySince(own, at) <= earlyUntilDay.value)
  if (early.some(({ worse }) => worse)) return true
  return early.some(({ at }) => daySince(own, at) >= 1) ? false : null
}

/** The last look decides: still there on the day from which it counts as lasting, or gone. */
function lastingOf(looks: readonly Look[], own: OwnCase, rules: OwnCountingRules): KnownOutcome {
  const last = looks.at(-1)
  if (!last) return null
  const day = daySince(own, last.at)
  if (last.worse) return day >= rules.lastingFromDay.value ? true : null
  return day >= rules.recoveredFromDay.value ? false : null
}

function woundOf(own: OwnCase, { earlyUntilDay, woundFromDay }: OwnCountingRules): KnownOutcome {
  const early = own.checks.filter(({ at }) => daySince(own, at) <= earlyUntilDay.value)
  if (early.some(({ body }) => body.wound === 'gap' || body.wound === 'infected')) return true
  const closed = own.checks.some(({ at, body }) => body.wound === 'closed' && daySince(own, at) >= woundFromDay.value)
  return closed ? false : null
}

function deathOf(own: OwnCase, { deathUntilDay }: OwnCountingRules): KnownOutcome {
  const days = own.death ? daySince(own, own.death.at) : null
  const around = days !== null && days >= 0 && days <= deathUntilDay.value
  if (around) {
    const related = own.death?.body.relatedToEar
    return related === 'unknown' ? null : related !== 'no'
  }
  if (days !== null && days > deathUntilDay.value) return false
  const alive = [...own.checks, ...own.statuses].some(({ at }) => daySince(own, at) > deathUntilDay.value)
  return alive ? false : null
}

function deepOf(own: OwnCase, rules: OwnCountingRules): KnownOutcome {
  if (deepEvents(own).length > 0) return true
  return askedAfterAYear(own, rules) ? false : null
}

function revisionOf(own: OwnCase, rules: OwnCountingRules): KnownOutcome {
  if (own.again !== null || own.late.some(({ body }) => body.needed === 'operation')) return true
  return askedAfterAYear(own, rules) ? false : null
}

/** Somebody saw or spoke of the ear after a year; "nobody reached" is not an answer. */
function askedAfterAYear({ statuses, checks, ...own }: OwnCase, { yearFromDay }: OwnCountingRules): boolean {
  const told = statuses.some(({ body }) => body.status !== 'unknown')
  return told || checks.some(({ at, body }) => body.seenBy !== 'owner-words' && daySince(own, at) >= yearFromDay.value)
}

function resolvedOf({ statuses }: OwnCase): KnownOutcome {
  const status = statuses.findLast(({ body }) => body.status !== 'unknown')?.body.status
  return status === undefined ? null : status !== 'failed'
}
