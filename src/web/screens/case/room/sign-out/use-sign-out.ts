import { signOutInEnglish as words } from '#content/wording/app-sign-out.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { signedOut, signOutOf } from '#core/theatre/sign-out.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import { useOperationPen } from '../use-operation-pen.ts'
import { useStamping } from '../use-stamping.ts'

/** Whether an operation is signed out, and the entries that sign it out and take that back. */
export function useSignOut(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { me } = useWho()
  const write = useOperationPen(operation)
  const { stamp } = useStamping(operation)
  return {
    ...signOutOf(file.theCase, operation.id),
    maySign: writersOf('theatre-stamp').includes(me.role),
    sign: () => stamp(signedOut),
    takeBack: ({ header }: Stamp) =>
      write({ kind: 'withdrawal', body: { because: 'wrong' }, withdraws: header.id, reason: words.takenBecause }),
  }
}
