import type { RegisterRow } from '#actions/store.ts'
import type { WaitingRow } from '../../../journal/database.ts'
import { waitingRows } from '../../../journal/outbox.ts'
import { useSignal } from '../../../journal/signal.ts'
import { useCaseView } from '../case-view.ts'

/** Who wrote a contact last, and what of it only this device has. */
export type Trail = {
  /** As the server has it; undefined while it has nothing of this contact. */
  readonly standing: RegisterRow | undefined
  readonly waiting: WaitingRow | undefined
}

export function useTrail(contact: string): Trail {
  const { registers } = useCaseView()
  const waiting = useSignal(waitingRows).find(({ id }) => id === contact)
  const isOnServer = ({ register, id, revision }: RegisterRow) =>
    register === 'contact' && id === contact && revision > 0 && revision < Number.MAX_SAFE_INTEGER
  return { standing: registers.find(isOnServer), waiting }
}

/** The revision that a change is written upon: that of the server, or that of the change which still waits here. */
export function upon({ standing, waiting }: Trail): number | null | undefined {
  if (waiting && waiting.state !== 'refused') return waiting.after
  return standing?.revision ?? null
}
