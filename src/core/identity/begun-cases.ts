import type { Species } from '#core/animal/species.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'

/** A case as the lists carry it, of which only this device knows yet. */
export type BegunCase = {
  readonly stream: string
  readonly animal: string
  readonly name: string
  readonly species: Species
  readonly chip: string | null
  readonly contact: string | null
  readonly household: string
  readonly householdId: string
  readonly chapter: 'Referral'
  readonly conflicts: number
  readonly ownerName: string | null
  readonly ownerPhone: string | null
}

type Owner = { readonly name: string; readonly phone: string | null }

/**
 * Rows for the cases that were begun on this device and are not sent yet, so that they are found, and a second call
 * about the same animal finds the first. `known` are the streams that the lists have already.
 *
 * @example begunCases(unsent, new Set(), owners)[0].name // 'Bryony'
 */
export function begunCases(
  unsent: readonly Entry[],
  known: ReadonlySet<string>,
  owners: ReadonlyMap<string, Owner>,
): BegunCase[] {
  const streams = [...new Set(unsent.map(({ stream }) => stream))].filter((stream) => !known.has(stream))
  return streams.flatMap((stream) => {
    const theCase = fold(unsent.filter((entry) => entry.stream === stream))
    const identity = theCase.latest('identity')
    if (identity?.header.subject.kind !== 'animal') return []
    const { name, species, chip, household } = identity.body
    const contacts = theCase.live('household').flatMap(({ body }) => body.contacts)
    const contact = contacts.find(({ roles }) => roles.includes('owner'))?.contact ?? null
    const owner = contact === null ? undefined : owners.get(contact)
    const who = { ownerName: owner?.name ?? null, ownerPhone: owner?.phone ?? null }
    const { animal } = identity.header.subject
    return [
      {
        stream,
        animal,
        name,
        species,
        chip,
        contact,
        household,
        householdId: household,
        chapter: 'Referral',
        conflicts: 0,
        ...who,
      },
    ]
  })
}
