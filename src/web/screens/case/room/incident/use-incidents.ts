import type { BodyOf } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import { useOperationPen } from '../use-operation-pen.ts'

/** The incident notes of an operation, and the writing of one that carries the moment of now. */
export function useIncidents(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { me } = useWho()
  const write = useOperationPen(operation)
  return {
    notes: linesAbout(file.theCase, 'incident-note', operation.id),
    mayWrite: writersOf('incident-note').includes(me.role),
    write: (body: BodyOf<'incident-note'>) => write({ kind: 'incident-note', body }),
  }
}
