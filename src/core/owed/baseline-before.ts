import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { anaestheticOf } from './one-anaesthetic.ts'
import type { OperationOnFile } from './operations.ts'

/**
 * The last look at face and eyes that counts for an operation: before sedation, before that instant, and after the
 * operation before this one. The other ear under the same anaesthetic has the look of the first.
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
  return theCase
    .live('baseline')
    .filter(({ at, body }) => body.beforeSedation && at <= until && at > (before?.moment.at ?? ''))
    .at(-1)
}
