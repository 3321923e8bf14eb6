import { z } from 'zod'
import { contactRow } from '#core/journal/registers.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'

const contact = z.object({
  id: z.string(),
  kind: z.enum(['vet', 'laboratory', 'other']),
  name: z.string(),
  practice: z.string().nullable(),
  phone: z.string().nullable(),
})
export type ListedContact = z.infer<typeof contact>

/** The address book: vets, laboratories and other contacts, by name. Owners are not in it: they belong to their cases. */
export const readContacts = defineAction({
  name: 'read-contacts',
  summary: 'The vets, laboratories and other contacts of the clinic, without the owners.',
  input: z.strictObject({}),
  output: z.object({ contacts: z.array(contact) }),
  may: 'signed-in',
  run: async (_, world) => {
    const { clinic } = callerIn(world)
    return { contacts: addressBook(await world.store.current(clinic, 'contact')) }
  },
})

export function addressBook(rows: readonly { readonly id: string; readonly body: unknown }[]): ListedContact[] {
  return rows
    .flatMap(({ id, body }): ListedContact[] => {
      const { kind, name, practice, phone } = contactRow.parse(body)
      return kind === 'owner' ? [] : [{ id, kind, name, practice, phone }]
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1))
}
