import type { ContactRow } from '#core/journal/registers.ts'

/** A contact as it is typed: an empty field is one that nobody knows. */
export type TypedContact = {
  readonly name: string
  readonly practice: string
  readonly phone: string
  readonly email: string
  /** One line of the address on each line. */
  readonly address: string
}

export type ContactFault = 'name-missing' | 'phone-without-digits' | 'email-unreadable' | 'address-line-too-long'

export const nothingTyped: TypedContact = { name: '', practice: '', phone: '', email: '', address: '' }

export function typedOf({ name, practice, phone, email, address }: ContactRow): TypedContact {
  return { name, practice: practice ?? '', phone: phone ?? '', email: email ?? '', address: address.join('\n') }
}

/** The row that is kept, without the spaces around what was typed. */
export function contactOf(typed: TypedContact, kind: ContactRow['kind']): ContactRow {
  const given = (text: string) => text.trim() || null
  const { practice, phone, email } = typed
  return {
    kind,
    name: typed.name.trim(),
    practice: given(practice),
    phone: given(phone),
    email: given(email),
    address: linesOf(typed.address),
  }
}

/**
 * What cannot be kept as it was typed, each said at its field. A number is not judged by its form: numbers of other
 * countries and extensions are right too.
 *
 * @example contactFaults({ ...nothingTyped, name: 'Ada', phone: 'at work' }) // ['phone-without-digits']
 */
export function contactFaults({ name, phone, email, address }: TypedContact): ContactFault[] {
  return [
    ...(name.trim() === '' ? (['name-missing'] as const) : []),
    ...(phone.trim() !== '' && !/\d/.test(phone) ? (['phone-without-digits'] as const) : []),
    ...(email.trim() !== '' && !/^[^\s@]+@[^\s@]+$/.test(email.trim()) ? (['email-unreadable'] as const) : []),
    ...(linesOf(address).some((line) => line.length > 300) ? (['address-line-too-long'] as const) : []),
  ]
}

function linesOf(address: string): string[] {
  return address
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
}
