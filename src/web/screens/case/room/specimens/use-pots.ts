import { specimensInEnglish as words } from '#content/wording/app-specimens.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { nextLabel, type Pot, potsOf } from '#core/theatre/specimens.ts'
import { writeEntry } from '../../../../journal/write-entry.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import { useOperationPen } from '../use-operation-pen.ts'
import { useStamping } from '../use-stamping.ts'

type Taking = Pick<BodyOf<'specimen'>, 'site' | 'tests' | 'laboratory' | 'antibioticsOnBoard'>

/** The pots of an operation, and what is written of them: taken now, the label is on, it is not after all. */
export function usePots(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const write = useOperationPen(operation)
  const { takeBack } = useStamping(operation)
  return {
    pots: potsOf(file.theCase, operation.id),
    label: nextLabel(file.theCase),
    take: (said: Taking) =>
      writeEntry(pen, {
        kind: 'specimen',
        stream: file.stream,
        subject: { kind: 'ear', animal: animalIn(file), side: operation.side },
        body: { ...said, label: nextLabel(file.theCase), expectedBy: null, operation: operation.id },
      }),
    /** A tap for what the pot was called before is replaced: one pot has one label. */
    labelled: ({ checkpoint, says, taps }: Pot) =>
      write({
        kind: 'theatre-stamp',
        body: { checkpoint, answer: 'done', detail: { ...says }, text: null },
        ...(taps.length > 0 ? { supersedes: taps.map(({ header }) => header.id), reason: words.again } : {}),
      }),
    takeBack,
  }
}
