import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { secondSideOf } from '#core/second-side/second-side.ts'
import { anaestheticOf } from './one-anaesthetic.ts'
import type { OperationOnFile } from './operations.ts'

/**
 * The last look at face and eyes that counts for an operation: before sedation, before that instant, and after the
 * operation before this one; for a second side from the day of its decision on. The other ear under the same anaesthetic has the look of the first.
 *
 * @example baselineBefore(operation, operations, theCase, now)?.body[operation.side].blink // 'normal'
 */
export function baselineBefore(
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  theCase: Case,
  until: string,
): Line<BodyOf<'baseline'>> | undefined {
  const together = anaestheticOf(operation, operations, theCase)
  const before = operations
    .filter(({ id, done, moment }) => done && moment.at < operation.moment.at && !together.includes(id))
    .at(-1)
  const since = secondSideOf(operation, operations, theCase)?.since ?? ''
  return theCase
    .live('baseline')
    .filter(({ at, body }) => body.beforeSedation && at <= until && at > (before?.moment.at ?? '') && at >= since)
    .at(-1)
}

/** The last look before any sedative from a moment on: what counts for a second side that is not booked yet. */
export function baselineSince(theCase: Case, since: string): Line<BodyOf<'baseline'>> | undefined {
  return theCase.live('baseline').findLast(({ at, body }) => body.beforeSedation && at >= since)
}
