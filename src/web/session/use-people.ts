import { useEffect } from 'react'
import type { PersonRow } from '#core/journal/registers.ts'
import type { Leave } from '#core/people/leave.ts'
import { call } from '../journal/api.ts'
import { Source } from '../journal/cases.ts'
import { keep, putKept } from '../journal/database.ts'
import { onChange } from '../journal/live.ts'
import { useSignal } from '../journal/signal.ts'

type Staff = {
  readonly asOf: string
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: PersonRow['role'] }[]
  readonly leaves: readonly Leave[]
}

const staff = new Source<Staff>({
  kept: () => keep<Staff>('staff'),
  fetch: async () => ({ ...(await call<Omit<Staff, 'asOf'>>('list-people', {})), asOf: new Date().toISOString() }),
  put: (value) => putKept('staff', value),
})
onChange.add(() => void staff.refresh())

/** Everybody of the clinic, who is away, and the name behind an id; nobody until it was read once. */
export function usePeople() {
  const reading = useSignal(staff.reading)
  useEffect(() => {
    void staff.start()
  }, [])
  const { people, leaves } = reading.kind === 'read' ? reading.value : { people: [], leaves: [] }
  return { people, leaves, nameOf: (id: string) => people.find((person) => person.id === id)?.name ?? id }
}
