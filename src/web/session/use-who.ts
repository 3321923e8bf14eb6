import { useSignal } from '../journal/signal.ts'
import type { Pen } from '../journal/write-entry.ts'
import { type Enrolled, session, type Who } from './session.ts'

/** The clinic and the person acting now. Only inside the signed-in part of the app. */
export function useWho(): Who & { readonly me: Enrolled; readonly pen: Pen } {
  const now = useSignal(session)
  if (now.kind !== 'in') throw new Error('Nobody is signed in.')
  const { who } = now
  const me = who.people.find(({ id }) => id === who.active)
  if (!me) throw new Error(`${who.active} is not enrolled at this device.`)
  return { ...who, me, pen: { clinic: who.clinic.id, person: me.id, zone: who.clinic.row.zone } }
}
