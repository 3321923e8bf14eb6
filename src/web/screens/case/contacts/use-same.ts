import { useEffect, useState } from 'react'
import type { FoundContacts } from '#actions/people/find-contact.ts'
import type { TypedContact } from '#core/people/contact-typed.ts'
import { call, Refused, Unreachable } from '../../../journal/api.ts'

export type SameContact = FoundContacts['contacts'][number]

const pause = 300

/** Who is on record already under what is being typed, asked of the server when the typing rests; nobody while it is away. */
export function useSame({ name, phone, email }: TypedContact): readonly SameContact[] {
  const [same, setSame] = useState<readonly SameContact[]>([])
  useEffect(() => {
    let gone = false
    const ask = async () => {
      try {
        const { contacts } = await call<FoundContacts>('find-contact', { name, phone, email })
        if (!gone) setSame(contacts)
      } catch (error) {
        if (!(error instanceof Unreachable || error instanceof Refused)) throw error
        if (!gone) setSame([])
      }
    }
    const timer = setTimeout(() => void ask(), pause)
    return () => {
      gone = true
      clearTimeout(timer)
    }
  }, [name, phone, email])
  return same
}
