import type { BodyOf } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { PauseAnswer } from '#core/theatre/pause-run.ts'
import { momentAgain } from '../../../../journal/moment-again.ts'
import { useOperationPen } from '../use-operation-pen.ts'

type Body = BodyOf<'pause-item'>

/** What a spoken pause writes: an answer of now, and another answer instead of one that stands. */
export function usePausing(operation: OperationOnFile) {
  const write = useOperationPen(operation)
  return {
    say: (body: Body) => write({ kind: 'pause-item', body }),
    /** Answered anew it has the moment of now; written wrongly it keeps the moment it was spoken at. */
    change: (stands: PauseAnswer, body: Body, { reason, anew }: { reason: string; anew: boolean }) =>
      write({
        kind: 'pause-item',
        body,
        ...(anew ? {} : { happenedAt: momentAgain(stands) }),
        supersedes: [stands.header.id],
        reason,
      }),
  }
}
