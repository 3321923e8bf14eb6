import { useEffect, useState } from 'react'
import type { ListedContact } from '#actions/people/read-contacts.ts'
import { call, Refused, Unreachable } from '../../journal/api.ts'
import { keep, putKept } from '../../journal/database.ts'

/** The vets on file: at once those this device read last, then those the server has. */
export function useVets(): readonly ListedContact[] {
  const [vets, setVets] = useState<readonly ListedContact[]>([])
  useEffect(() => {
    let gone = false
    const show = (contacts: readonly ListedContact[]) => gone || setVets(contacts.filter(({ kind }) => kind === 'vet'))
    const read = async () => {
      show((await keep<readonly ListedContact[]>('vets')) ?? [])
      try {
        const { contacts } = await call<{ contacts: readonly ListedContact[] }>('read-contacts', {})
        show(contacts)
        await putKept('vets', contacts)
      } catch (error) {
        if (!(error instanceof Unreachable || error instanceof Refused)) throw error
      }
    }
    void read()
    return () => {
      gone = true
    }
  }, [])
  return vets
}
