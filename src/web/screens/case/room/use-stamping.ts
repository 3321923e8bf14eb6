import { roomInEnglish as words } from '#content/wording/app-room.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import type { Moment } from '#core/time/moment.ts'
import { momentAgain } from '../../../journal/moment-again.ts'
import { useOperationPen } from './use-operation-pen.ts'

type Body = BodyOf<'theatre-stamp'>

/** What the screen beside the table writes: a stamp of now, answers to a stamp that stands, and taking one back. */
export function useStamping(operation: OperationOnFile) {
  const write = useOperationPen(operation)
  return {
    /** Of now, or of a tap that waited for its reason. */
    stamp: (checkpoint: string, said: Partial<Body> = {}, happenedAt: Moment | null = null) =>
      write({
        kind: 'theatre-stamp',
        body: { checkpoint, answer: 'done', detail: {}, text: null, ...said },
        happenedAt,
      }),
    /** The answers change; the moment of the tap stays. */
    answer: (stamp: Stamp, said: Pick<Body, 'detail' | 'text'>) =>
      write({
        kind: 'theatre-stamp',
        body: { ...stamp.body, ...said },
        happenedAt: momentAgain(stamp),
        supersedes: [stamp.header.id],
        reason: words.answersAdded,
      }),
    takeBack: ({ header }: Stamp) =>
      write({ kind: 'withdrawal', body: { because: 'wrong' }, withdraws: header.id, reason: words.takenBecause }),
  }
}
