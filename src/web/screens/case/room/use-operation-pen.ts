import { aboutOperation } from '#core/chapters/subjects-for.ts'
import type { KindName } from '#core/journal/fold.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type Writing, writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'

/** Writes entries about one operation, in the name of whoever acts: what every screen beside the table does. */
export function useOperationPen(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const subject = aboutOperation(file, operation.id)
  return <Name extends KindName>(writing: Omit<Writing<Name>, 'stream' | 'subject'>) =>
    writeEntry(pen, { ...writing, stream: file.stream, subject } as Writing<Name>)
}
