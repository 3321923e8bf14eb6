import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import type { RoomCall } from '#core/theatre/room-call.ts'
import { lastShout, nextNumber, type Shout, shoutCheckpoint, shoutsOf } from '#core/theatre/shouts.ts'
import { useWho } from '../../../../session/use-who.ts'
import { useCaseView } from '../../case-view.ts'
import { useStamping } from '../use-stamping.ts'

/** The emergencies of an operation, and the stamps that begin and end one. */
export function useShouts(operation: OperationOnFile) {
  const { file } = useCaseView()
  const { me } = useWho()
  const { stamp, takeBack } = useStamping(operation)
  const shouts = shoutsOf(file.theCase, operation.id)
  return {
    shouts,
    mayStamp: writersOf('theatre-stamp').includes(me.role),
    last: (call: RoomCall) => lastShout(shouts, call),
    begin: (call: RoomCall) => stamp(shoutCheckpoint('on', call, nextNumber(shouts, call))),
    end: ({ call, number }: Shout, text: string | null) => stamp(shoutCheckpoint('off', call, number), { text }),
    takeBack: ({ begun }: Shout) => takeBack(begun),
  }
}
