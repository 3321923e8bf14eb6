import { contactsInEnglish as words } from '#content/wording/app-contacts.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { newId } from '../../../journal/device.ts'
import { makeEntry, type Pen } from '../../../journal/write-entry.ts'

type Member = BodyOf<'household'>['contacts'][number]

/** Somebody who was added, and the part they have in the case. */
export type Named = {
  readonly part: 'household' | 'vet' | 'laboratory'
  readonly contact: string
  readonly name: string
  readonly roles: readonly Member['roles'][number][]
  readonly mayConsent: boolean
  /** Of a household that begins here. */
  readonly language: string
}

/** The entry that names somebody in the case; none for a laboratory, which belongs to the address book alone. */
export function entriesFor(pen: Pen, file: CaseFile, named: Named): Entry[] {
  switch (named.part) {
    case 'household':
      return [householdWith(pen, file, named)]
    case 'vet':
      return identityWith(pen, file, named)
    case 'laboratory':
      return []
  }
}

function householdWith(pen: Pen, file: CaseFile, { contact, name, roles, mayConsent, language }: Named): Entry {
  const member: Member = { contact, roles: [...roles], mayConsent }
  const before = file.theCase.latest('household')
  if (before) {
    const { header, body } = before
    const { stream, subject } = header
    const changed = { ...body, contacts: [...body.contacts, member] }
    const reason = fill(words.reasons.person, { name })
    return makeEntry(pen, { kind: 'household', stream, subject, body: changed, supersedes: [header.id], reason })
  }
  const household = file.theCase.latest('identity')?.body.household ?? `household-${newId()}`
  const subject: Subject = { kind: 'household', household }
  const body = { contacts: [member], language, otherAnimals: null }
  return makeEntry(pen, { kind: 'household', stream: file.stream, subject, body })
}

function identityWith(pen: Pen, file: CaseFile, { contact, name }: Named): Entry[] {
  const before = file.theCase.latest('identity')
  if (!before) return []
  const { stream, subject, id } = before.header
  const body = { ...before.body, referringVet: contact }
  const reason = fill(words.reasons.vet, { name })
  return [makeEntry(pen, { kind: 'identity', stream, subject, body, supersedes: [id], reason })]
}
