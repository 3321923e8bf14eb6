import type { Author } from './entry.ts'
import type { Case } from './fold.ts'
import type { ClinicRow, ContactRow, PersonRow } from './registers.ts'

/** Everything a paper or a list needs about one case: the clinic around it, and the case itself. */
export type CaseFile = {
  readonly clinicId: string
  readonly clinic: ClinicRow
  readonly people: ReadonlyMap<string, PersonRow>
  readonly contacts: ReadonlyMap<string, ContactRow>
  /** Days on which no visit can fall due, `2026-12-25`. */
  readonly closedDays: readonly string[]
  readonly stream: string
  readonly theCase: Case
  /** The clinic's own stream: shelf, usual plans, house policy. */
  readonly house: Case
}

/** The person behind an id, or the id itself in angle brackets when the register does not know it. */
export function personNamed(file: Pick<CaseFile, 'people'>, id: string): string {
  return file.people.get(id)?.name ?? `‹${id}›`
}

export function contactNamed(file: Pick<CaseFile, 'contacts'>, id: string): string {
  return file.contacts.get(id)?.name ?? `‹${id}›`
}

/** Whoever wrote an entry, by name: a person, an owner through the link, a referring vet, or where it was imported from. */
export function authorNamed(file: Pick<CaseFile, 'people' | 'contacts'>, author: Author): string {
  switch (author.kind) {
    case 'person':
      return personNamed(file, author.person)
    case 'owner-link':
    case 'referring-vet':
      return contactNamed(file, author.contact)
    case 'import':
      return file.contacts.get(author.from)?.name ?? author.from
  }
}
