import { animalIn } from '#core/chapters/subjects-for.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { PauseAnswer } from '#core/theatre/pause-run.ts'
import { momentAgain } from '../../../../journal/moment-again.ts'
import { writeEntry } from '../../../../journal/write-entry.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'

type Body = BodyOf<'pause-item'>

/** What a spoken pause writes: an answer of now, and another answer instead of one that stands. */
export function usePausing(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const about = {
    kind: 'pause-item',
    stream: file.stream,
    subject: { kind: 'operation', animal: animalIn(file), operation: operation.id },
  } as const
  return {
    say: (body: Body) => writeEntry(pen, { ...about, body }),
    /** Answered anew it has the moment of now; written wrongly it keeps the moment it was spoken at. */
    change: (stands: PauseAnswer, body: Body, { reason, anew }: { reason: string; anew: boolean }) =>
      writeEntry(pen, {
        ...about,
        body,
        ...(anew ? {} : { happenedAt: momentAgain(stands) }),
        supersedes: [stands.header.id],
        reason,
      }),
  }
}
