import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import type { Moment } from '#core/time/moment.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'

type Body = BodyOf<'theatre-stamp'>

/** What the screen beside the table writes: a stamp of now, answers to a stamp that stands, and taking one back. */
export function useStamping(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const about = {
    kind: 'theatre-stamp',
    stream: file.stream,
    subject: { kind: 'operation', animal: animalIn(file), operation: operation.id },
  } as const
  return {
    /** Of now, or of a tap that waited for its reason. */
    stamp: (checkpoint: string, said: Partial<Body> = {}, happenedAt: Moment | null = null) =>
      writeEntry(pen, { ...about, body: { checkpoint, answer: 'done', detail: {}, text: null, ...said }, happenedAt }),
    /** The answers change; the moment of the tap stays. */
    answer: ({ header, body }: Stamp, said: Pick<Body, 'detail' | 'text'>) =>
      writeEntry(pen, {
        ...about,
        body: { ...body, ...said },
        happenedAt: header.happenedAt,
        supersedes: [header.id],
        reason: words.answersAdded,
      }),
    takeBack: ({ header }: Stamp) =>
      writeEntry(pen, {
        ...about,
        kind: 'withdrawal',
        body: { because: 'wrong' },
        withdraws: header.id,
        reason: words.takenBecause,
      }),
  }
}
