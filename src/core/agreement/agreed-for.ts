import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isOfEar, type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { secondSideOf } from '#core/second-side/second-side.ts'

export type Agreement = Line<BodyOf<'agreement'>>
export type ConsentWithdrawn = Line<BodyOf<'consent-withdrawn'>>

/** Whether an agreement is about an ear. */
export function isForEar({ body }: Agreement, side: Side): boolean {
  return body.plan.ears.some((ear) => ear.side === side)
}

/**
 * The agreement an operation stands on: the newest for its ear, from the one its booking names onwards. A booking that
 * names none takes what was agreed for this ear since it was last operated on. What was agreed before a second side was
 * decided does not count for it, whatever the booking names; once it was done it stands on what it had.
 *
 * @example agreementFor(operation, theCase)?.body.plan.ceiling
 */
export function agreementFor(operation: OperationOnFile, theCase: Case): Agreement | null {
  const { side, booking, done, moment } = operation
  const until = done === null ? null : moment.at
  const agreed = theCase.live('agreement').filter((one) => isForEar(one, side) && (until === null || one.at <= until))
  const named = booking?.body.agreement ?? null
  const from = named === null ? lastCut(operation, theCase) : (theCase.line(named)?.at ?? null)
  const since = done ? null : (secondSideOf(operation, operationsOf({ theCase }), theCase)?.since ?? null)
  return agreed.findLast(({ at }) => (from === null || at >= from) && (since === null || at >= since)) ?? null
}

function lastCut({ id, side, moment }: OperationOnFile, theCase: Case): string | null {
  const before = operationsOf({ theCase }).filter(
    (one) => one.id !== id && one.side === side && one.done && one.moment.at < moment.at,
  )
  return before.at(-1)?.moment.at ?? null
}

/**
 * The withdrawal that ended an agreement for one ear; null while it stands. A newer agreement stands again.
 *
 * @example withdrawnFor(agreement, 'LEFT', theCase)?.body.why
 */
export function withdrawnFor(agreement: Agreement, side: Side, theCase: Case): ConsentWithdrawn | null {
  return theCase.live('consent-withdrawn').findLast((line) => isOfEar(line, side) && line.at >= agreement.at) ?? null
}
