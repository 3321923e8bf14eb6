import { phoneDigits, plainName } from '#core/identity/names.ts'
import type { ContactRow } from '#core/journal/registers.ts'

/** What one contact has in common with another, the surest first. A family may share each of them. */
export const sameContactReasons = ['same-phone', 'same-email', 'same-name'] as const
export type SameContactReason = (typeof sameContactReasons)[number]

type Reached = Pick<ContactRow, 'name' | 'phone' | 'email'>

/**
 * Why what is typed may be somebody who is on record already; empty when nothing says so. It only offers: whether two
 * are one person, a person says.
 *
 * @example sameContact({ name: 'Ada Ode', phone: '+44 1632 960111', email: null }, row) // ['same-phone']
 */
export function sameContact(typed: Reached, row: Reached): SameContactReason[] {
  const has = {
    'same-phone': same(typed.phone, row.phone, phoneDigits),
    'same-email': same(typed.email, row.email, (email) => email.trim().toLowerCase() || null),
    'same-name': same(typed.name, row.name, (name) => plainName(name) || null),
  } satisfies Record<SameContactReason, boolean>
  return sameContactReasons.filter((reason) => has[reason])
}

function same(one: string | null, other: string | null, plain: (text: string) => string | null): boolean {
  const left = one === null ? null : plain(one)
  return left !== null && other !== null && left === plain(other)
}
