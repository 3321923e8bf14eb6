import type { Entry, Header } from '#core/journal/entry.ts'
import type { PersonRow } from '#core/journal/registers.ts'
import { writersOf } from '#core/people/may-write.ts'
import type { Caller } from '../action.ts'
import { Refused } from '../refused.ts'
import type { Store } from '../store.ts'
import type { Accounts } from './accounts.ts'
import { isEnrolledEver } from './caller.ts'

type Where = { readonly store: Store; readonly accounts: Accounts; readonly clinic: string }

/**
 * Refuses the delivery when one entry is in the name of somebody who is not signed in at this device, or of a kind
 * that this person's role may not write, or takes back or corrects an entry of such a kind. Somebody whose account was
 * closed cannot come back: what they wrote here is brought by whoever is signed in here now.
 */
export async function refuseForeignAuthors(
  entries: readonly Entry[],
  caller: Pick<Caller, 'people' | 'device'>,
  staff: ReadonlyMap<string, PersonRow>,
  { store, accounts, clinic }: Where,
): Promise<void> {
  const atStake = kindsAtStake(entries, { store, clinic })
  for (const [at, entry] of entries.entries()) {
    const author =
      authorOf(entry, caller, staff, `entries[${at}]`) ??
      (await absentAuthor(entry, caller, staff, { accounts, clinic, at }))
    refuseKind(entry.kind, author, `entries[${at}].kind`)
    for (const aim of aimsOf(entry)) {
      const path = `entries[${at}].${aim === entry.withdraws ? 'withdraws' : 'supersedes'}`
      for (const kind of await atStake(aim)) refuseKind(kind, author, path)
    }
  }
}

/**
 * The kinds that are at stake when an entry is corrected or taken back: its own, and those of everything it corrected
 * or took back in turn, because taking back a withdrawal brings them to life again. What the store has under an id and
 * what this delivery brings under it both count, so that nobody hides an entry behind one of their own.
 */
function kindsAtStake(entries: readonly Entry[], { store, clinic }: Pick<Where, 'store' | 'clinic'>) {
  const stored = new Map<string, Header | undefined>()
  const headersOf = async (id: string): Promise<Header[]> => {
    if (!stored.has(id)) stored.set(id, (await store.entry(clinic, id))?.header)
    const kept = stored.get(id)
    const brought: Header[] = entries.filter((entry) => entry.id === id)
    return kept ? [...brought, kept] : brought
  }
  return async (id: string): Promise<Set<string>> => {
    const kinds = new Set<string>()
    const reached = new Set([id])
    for (const one of reached) {
      for (const header of await headersOf(one)) {
        kinds.add(header.kind)
        for (const aim of aimsOf(header)) reached.add(aim)
      }
    }
    return kinds
  }
}

function aimsOf({ supersedes, withdraws }: Header): readonly string[] {
  return withdraws === null ? supersedes : [...supersedes, withdraws]
}

function authorOf(
  { author }: Entry,
  { people }: Pick<Caller, 'people'>,
  staff: ReadonlyMap<string, PersonRow>,
  place: string,
): PersonRow | undefined {
  if (author.kind !== 'person') {
    const message = `An entry sent from here is written by a person who is signed in, not by ${author.kind}.`
    throw new Refused(403, 'other-author', message, { path: `${place}.author` })
  }
  return people.includes(author.person) ? staff.get(author.person) : undefined
}

/**
 * Whoever was signed in here before only has to come back: the device keeps the entry until then. Whose account is
 * closed cannot, and what they wrote here would never arrive: it is taken as theirs from whoever is here.
 */
async function absentAuthor(
  { author }: Entry,
  { device }: Pick<Caller, 'device'>,
  staff: ReadonlyMap<string, PersonRow>,
  { accounts, clinic, at }: { accounts: Accounts; clinic: string; at: number },
): Promise<PersonRow> {
  const person = author.kind === 'person' ? author.person : ''
  const path = `entries[${at}].author.person`
  const sessions = await accounts.ofDevice(clinic, device)
  const before = sessions.some((session) => isEnrolledEver(session, { clinic, person }))
  const row = staff.get(person)
  if (!before || !row) {
    const message = `${row?.name ?? person} never signed in at this device and cannot have written here.`
    throw new Refused(403, 'other-author', message, { path })
  }
  const account = await accounts.byPerson(clinic, person)
  if (account?.active === false) return row
  const message = `${row.name} is signed out at this device: what they wrote here is sent when they sign in again.`
  throw new Refused(403, 'author-signed-out', message, { path })
}

function refuseKind(kind: string, { name, role }: PersonRow, path: string): void {
  const writers = writersOf(kind)
  if (writers.includes(role)) return
  const message = `${name} is ${role} and may not write, correct or take back ${kind}; ${writers.join(', ')} may.`
  throw new Refused(403, 'kind-not-allowed', message, { path })
}
