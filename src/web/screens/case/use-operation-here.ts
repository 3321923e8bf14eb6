import { useParams } from 'wouter'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { useCaseView } from './case-view.ts'

/** The operation that the address names, and what an entry about it is about; both absent when it is not on file. */
export function useOperationHere() {
  const { operation: wanted = '' } = useParams()
  const { operations, file } = useCaseView()
  const operation = operations.find(({ id }) => id === wanted)
  return { wanted, operation, subject: operation ? aboutOperation(file, operation.id) : null }
}
