import { fits } from '#core/identity/search.ts'

/** A row of the list of cases, as far as its owner goes. */
type OwnedCase = {
  readonly name: string
  readonly contact: string | null
  readonly householdId: string | null
  readonly ownerName: string | null
  readonly ownerPhone: string | null
}

export type KnownOwner = {
  readonly contact: string
  readonly household: string
  readonly name: string
  readonly phone: string | null
  /** The names of their animals on file. */
  readonly animals: readonly string[]
}

const leastLetters = 3
const leastDigits = 6

/**
 * Owners on file whose phone or name is the one being typed, each once with their animals. Nothing is offered before
 * enough was typed to mean somebody.
 *
 * @example knownOwners(rows, { ownerName: 'Okaf', ownerPhone: '' })[0].animals // ['Tansy']
 */
export function knownOwners(
  rows: readonly OwnedCase[],
  { ownerName, ownerPhone }: { readonly ownerName: string; readonly ownerPhone: string },
): KnownOwner[] {
  const name = ownerName.trim().length >= leastLetters ? ownerName : null
  const phone = ownerPhone.replaceAll(/\D/g, '').length >= leastDigits ? ownerPhone : null
  const owners = new Map<string, KnownOwner>()
  for (const row of rows) {
    const { contact, householdId } = row
    if (contact === null || householdId === null || row.ownerName === null) continue
    const owner = { name: '', chip: null, ownerName: row.ownerName, ownerPhone: row.ownerPhone }
    if (!(name && fits(owner, name)) && !(phone && fits(owner, phone))) continue
    const animals = [...(owners.get(contact)?.animals ?? []), row.name]
    owners.set(contact, { contact, household: householdId, name: row.ownerName, phone: row.ownerPhone, animals })
  }
  return [...owners.values()]
}
