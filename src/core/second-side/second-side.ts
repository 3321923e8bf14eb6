import { otherSide, type Side } from '#core/animal/species.ts'
import { isOperation } from '#core/chapters/ears.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import { isOfEar, type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { laterOf } from '#core/owed/setting.ts'
import { dayOf, startOfDay } from '#core/time/calendar-day.ts'

/** An ear whose operation comes after the other one was done, under an anaesthetic of its own. */
export type SecondSide = {
  readonly side: Side
  /** The operation of the first ear. */
  readonly first: OperationOnFile
  /** The entry by which the second side was decided; null where it was booked before the first was operated. */
  readonly decided: Line<unknown> | null
  /** Only what was looked at, reckoned or agreed from here on counts for the second side. */
  readonly since: string
}

/**
 * What an operation of the second ear begins with: the first, and since when everything is new. The day of the decision
 * counts as a whole. Null for a first ear, for both ears under one anaesthetic, and for an ear operated again.
 *
 * @example secondSideOf(operation, operations, theCase)?.first.side // 'LEFT'
 */
export function secondSideOf(
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  theCase: Case,
): SecondSide | null {
  const { id, side, moment } = operation
  const before = operations.filter((one) => one.id !== id && one.done && one.moment.at < moment.at)
  if (before.some((one) => one.side === side)) return null
  const together = anaestheticOf(operation, operations, theCase)
  const first = before.filter((one) => !together.includes(one.id)).at(-1)
  return first ? secondAfter(first, side, operation.booking, theCase) : null
}

/**
 * The ear that is not operated yet, once it was decided to operate it after the other one; with its booking where there
 * is one. Null before that decision.
 *
 * @example secondSideAhead(theCase)?.since // '2026-09-01T23:00:00.000Z'
 */
export function secondSideAhead(
  theCase: Case,
): { readonly second: SecondSide; readonly operation: OperationOnFile | null } | null {
  const operations = operationsOf({ theCase })
  const operation = operations.findLast(({ done }) => !done)
  if (operation) {
    const second = secondSideOf(operation, operations, theCase)
    return second && { second, operation }
  }
  const first = operations.filter(({ done }) => done).at(-1)
  if (!first) return null
  const side = otherSide(first.side)
  if (operations.some((one) => one.side === side)) return null
  const second = secondAfter(first, side, null, theCase)
  return second.decided ? { second, operation: null } : null
}

function secondAfter(first: OperationOnFile, side: Side, booking: Line<unknown> | null, theCase: Case): SecondSide {
  const after = ({ at }: Pick<Line, 'at'>) => at > first.moment.at
  const decided = chosenSince(side, after, theCase) ?? (booking && after(booking) ? booking : null)
  if (!decided) return { side, first, decided: plannedLater(side, after, theCase), since: first.moment.at }
  const { zone } = decided.header.happenedAt
  const day = startOfDay(dayOf({ at: decided.at, zone }), zone)
  return { side, first, decided, since: laterOf(day, first.moment.at) }
}

/** The choice of an operation since which no other choice was made for this ear. */
function chosenSince(side: Side, after: (line: Line) => boolean, theCase: Case): Line<BodyOf<'choice'>> | null {
  const choices = theCase.live('choice').filter((line) => isOfEar(line, side) && after(line))
  const isChosen = ({ body }: Line<BodyOf<'choice'>>) =>
    body.options.some(({ option, answer }) => answer === 'chosen' && isOperation(option))
  const otherwise = choices.findLastIndex((line) => !isChosen(line))
  return choices[otherwise + 1] ?? null
}

/** "Operate later" is a plan and no decision yet: it opens the second side, and sets no day. */
function plannedLater(side: Side, after: (line: Line) => boolean, theCase: Case): Line<unknown> | null {
  const plan = theCase.live('other-ear-plan').findLast((line) => isOfEar(line, side) && after(line))
  return plan?.body.plan === 'operate-later' ? plan : null
}
