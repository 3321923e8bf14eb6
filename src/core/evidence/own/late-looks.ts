import type { TroubleEvent } from '#core/complications/trouble-codes.ts'
import { laterOf } from '#core/owed/setting.ts'
import { daySince, type OwnCase } from './own-case.ts'
import type { OwnCountingRules } from './own-outcome.ts'

type Check = OwnCase['checks'][number]

/** Asked and found none: the wound was seen closed and needed nothing. A look at the face alone saw no tract and no lack of one. */
function isQuiet({ body }: Check): boolean {
  return (
    body.seenBy !== 'owner-words' &&
    body.wound === 'closed' &&
    (body.woundNeeded === 'nothing' || body.woundNeeded === 'not-assessed')
  )
}

/** It tells of infection, discharge or swelling, or that something had to be done about one. */
function isTelling({ body }: Check): boolean {
  return (
    body.wound === 'infected' ||
    body.wound === 'gap' ||
    body.wound === 'seroma' ||
    body.woundNeeded === 'drug' ||
    body.woundNeeded === 'drainage-awake' ||
    body.woundNeeded === 'operation'
  )
}

/** What somebody may write down that a wound, a swelling or a failure was. */
const names: readonly TroubleEvent[] = [
  'wound-gap',
  'seroma',
  'wound-infection',
  'pinna-edge',
  'deep-infection',
  'tumour-again',
  'other',
]

/** Somebody wrote down, then or later, what it was. */
function isNamed({ at }: { readonly at: string }, own: OwnCase): boolean {
  return (
    own.troubles.some(
      (line) =>
        line.header.subject.kind === 'ear' &&
        names.includes(line.body.event) &&
        laterOf(line.at, line.body.firstNoticed.at) >= at,
    ) || own.late.some(({ at: told, body }) => body.what !== 'jaw-pain' && laterOf(told, body.firstSeen.at) >= at)
  )
}

/**
 * Somebody saw the ear quiet, or was told that it is well, late enough to be its look after a year. "Failed" is not that, nor
 * is a look at which the wound was not assessed.
 *
 * @example isWellAfterAYear(own, rules) // false: nobody asked yet
 */
export function isWellAfterAYear(own: OwnCase, { yearLookFromDay }: OwnCountingRules): boolean {
  const inTime = ({ at }: { readonly at: string }) => daySince(own, at) >= yearLookFromDay.value
  return (
    own.checks.some((line) => inTime(line) && isQuiet(line)) ||
    own.statuses.some((line) => inTime(line) && (line.body.status === 'solved' || line.body.status === 'improved'))
  )
}

/**
 * Late looks that tell of an infection, a discharge, a swelling, or of an ear that is not cured, while nobody has written down
 * what that was. An ear with one is not known to be free of anything.
 *
 * @example openLooks(own, rules).length // 1: infected at thirteen months, and nobody said what it was
 */
export function openLooks(
  own: OwnCase,
  { earlyUntilDay, yearLookFromDay }: OwnCountingRules,
): { readonly at: string }[] {
  const checks = own.checks.filter((line) => daySince(own, line.at) > earlyUntilDay.value && isTelling(line))
  const failed = own.statuses.filter(
    (line) => line.body.status === 'failed' && daySince(own, line.at) >= yearLookFromDay.value,
  )
  return [...checks, ...failed].filter((line) => !isNamed(line, own))
}

/** Checks that say that an operation is needed, of which nobody has written down what came of it. A first wound sewn again is none for infection. */
export function operationNeeded(own: OwnCase, { earlyUntilDay }: OwnCountingRules): Check[] {
  return own.checks.filter((line) => {
    const sewn = line.body.wound === 'gap' || line.body.wound === 'pinna-edge'
    const early = daySince(own, line.at) <= earlyUntilDay.value
    return line.body.woundNeeded === 'operation' && !(early && sewn) && !isNamed(line, own)
  })
}
