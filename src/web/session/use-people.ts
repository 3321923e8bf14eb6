import type { PersonRow } from '#core/journal/registers.ts'
import type { Leave } from '#core/people/leave.ts'
import { call } from '../journal/api.ts'
import { onChange } from '../journal/live.ts'
import { keptSource, useSource } from '../journal/source.ts'

type Staff = {
  readonly asOf: string
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: PersonRow['role'] }[]
  readonly leaves: readonly Leave[]
}

const staff = keptSource<Staff>('staff', async () => ({
  ...(await call<Omit<Staff, 'asOf'>>('list-people', {})),
  asOf: new Date().toISOString(),
}))
onChange.add(() => void staff.refreshWhereShown())

/** Everybody of the clinic, who is away, and the name behind an id; nobody until it was read once. */
export function usePeople() {
  const reading = useSource(staff)
  const { people, leaves } = reading.kind === 'read' ? reading.value : { people: [], leaves: [] }
  return { people, leaves, nameOf: (id: string) => people.find((person) => person.id === id)?.name ?? id }
}
