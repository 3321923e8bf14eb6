import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { type PersonRow, personRow } from '#core/journal/registers.ts'
import type { Caller, World } from '../action.ts'
import { callerIn } from '../caller.ts'
import { Refused } from '../refused.ts'
import type { Store } from '../store.ts'
import type { Account, Session } from './accounts.ts'

/** Of a token only this is kept: whoever reads the data file cannot sign in with it. */
export function hashOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)))
}

export function isOpen({ endedAt, expiresAt }: Session, now: string): boolean {
  return endedAt === null && now < expiresAt
}

/** Who is enrolled at the device now. */
export function peopleOf({ people }: Session): string[] {
  return [...new Set(people.filter(({ until }) => until === null).map(({ person }) => person))]
}

/** Whether a person has ever signed in there, however long ago: the device is no stranger to their account. */
export function isEnrolledEver(session: Session, { clinic, person }: Pick<Account, 'clinic' | 'person'>): boolean {
  return session.clinic === clinic && session.people.some((one) => one.person === person)
}

/** The people of a clinic by id, as the register has them now. */
export async function staffOf(store: Store, clinic: string): Promise<ReadonlyMap<string, PersonRow>> {
  const rows = await store.current(clinic, 'person')
  return new Map(rows.map(({ id, body }) => [id, personRow.parse(body)]))
}

/**
 * Who asks: the session of the token, and of the people enrolled there the one named, or who proved themselves last.
 * Null when the token is none, forged, expired or ended. Naming somebody who is not enrolled there is refused.
 */
export async function callerOf(
  { store, accounts, clock }: Pick<World, 'store' | 'accounts' | 'clock'>,
  token: string | null,
  named: string | undefined,
): Promise<{ readonly clinic: string; readonly caller: Caller } | null> {
  const session = token === null ? undefined : await accounts.byToken(hashOf(token))
  if (!session || !isOpen(session, clock.now())) return null
  const { clinic } = session
  const staff = await staffOf(store, clinic)
  const people = peopleOf(session).filter((person) => staff.has(person))
  const person = named ?? session.active ?? people.at(-1)
  if (person === undefined) return null
  const account = await accounts.byPerson(clinic, person)
  const row = people.includes(person) && account?.active ? staff.get(person) : undefined
  if (!row && named === undefined) return null
  if (!row) throw new Refused(403, 'not-enrolled', `${person} is not signed in at this device; sign in here first.`)
  const keeper = row.role === 'manager' || account?.opened === true
  const proved = session.active === person
  const caller = { session: session.id, device: session.device, person, role: row.role, people, keeper, proved }
  return { clinic, caller }
}

/** For what only the person themselves may do: on a shared device the last to prove who they are must be that person. */
export function provedOf(world: Pick<World, 'caller' | 'clinic'>): {
  readonly caller: Caller
  readonly clinic: string
} {
  const who = callerIn(world)
  if (who.caller.proved) return who
  const message = `Switch to ${who.caller.person} with the PIN, or sign in again, before doing this.`
  throw new Refused(403, 'not-proved', message)
}
