import type { Entry } from '#core/journal/entry.ts'
import type { PersonRow } from '#core/journal/registers.ts'
import { writersOf } from '#core/people/may-write.ts'
import type { Caller } from '../action.ts'
import { Refused } from '../refused.ts'
import type { Store } from '../store.ts'

/**
 * Refuses the delivery when one entry is in the name of somebody who is not signed in at this device, or of a kind
 * that this person's role may not write, or takes back or corrects an entry of such a kind.
 */
export async function refuseForeignAuthors(
  entries: readonly Entry[],
  caller: Pick<Caller, 'people'>,
  staff: ReadonlyMap<string, PersonRow>,
  { store, clinic }: { readonly store: Store; readonly clinic: string },
): Promise<void> {
  const kinds = new Map(entries.map(({ id, kind }) => [id, kind]))
  for (const [at, entry] of entries.entries()) {
    const author = authorOf(entry, caller, staff, `entries[${at}]`)
    refuseKind(entry.kind, author, `entries[${at}].kind`)
    const aims = entry.withdraws === null ? entry.supersedes : [...entry.supersedes, entry.withdraws]
    for (const aim of aims) {
      const kind = kinds.get(aim) ?? (await store.entry(clinic, aim))?.header.kind
      if (kind !== undefined)
        refuseKind(kind, author, `entries[${at}].${aim === entry.withdraws ? 'withdraws' : 'supersedes'}`)
    }
  }
}

function authorOf(
  { author }: Entry,
  { people }: Pick<Caller, 'people'>,
  staff: ReadonlyMap<string, PersonRow>,
  place: string,
): PersonRow {
  const path = `${place}.author`
  if (author.kind !== 'person') {
    const message = `An entry sent from here is written by a person who is signed in, not by ${author.kind}.`
    throw new Refused(403, 'other-author', message, { path })
  }
  const row = people.includes(author.person) ? staff.get(author.person) : undefined
  if (row) return row
  const message = `${author.person} is not signed in at this device; sign in here as ${author.person} and send it again.`
  throw new Refused(403, 'other-author', message, { path: `${path}.person` })
}

function refuseKind(kind: string, { name, role }: PersonRow, path: string): void {
  const writers = writersOf(kind)
  if (writers.includes(role)) return
  const message = `${name} is ${role} and may not write, correct or take back ${kind}; ${writers.join(', ')} may.`
  throw new Refused(403, 'kind-not-allowed', message, { path })
}
