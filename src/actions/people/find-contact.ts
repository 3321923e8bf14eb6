import { z } from 'zod'
import { contactRow } from '#core/journal/registers.ts'
import { mayPut } from '#core/people/may-put.ts'
import { sameContact, sameContactReasons } from '#core/people/same-contact.ts'
import { defineAction } from '../action.ts'
import { callerIn } from '../caller.ts'

const line = z.string().max(300)
const found = z.object({
  id: z.string(),
  kind: contactRow.shape.kind,
  name: z.string(),
  practice: z.string().nullable(),
  phone: z.string().nullable(),
  why: z.array(z.enum(sameContactReasons)),
})
const answer = z.object({ contacts: z.array(found) })
export type FoundContacts = z.infer<typeof answer>

const most = 5

/**
 * Who is on record already under the phone, e-mail or name that is being typed, owners too: so that the owner of two
 * animals stays one contact. Nobody is merged by it.
 */
export const findContact = defineAction({
  name: 'find-contact',
  summary: 'Contacts on record with the phone, e-mail or name that is being typed, the surest first.',
  input: z.strictObject({ name: line, phone: line, email: line }),
  output: answer,
  may: mayPut.contact,
  run: async (typed, world) => {
    const { clinic } = callerIn(world)
    const rows = await world.store.current(clinic, 'contact')
    const contacts = rows
      .map(({ id, body }) => ({ id, ...contactRow.parse(body) }))
      .map(({ id, kind, practice, ...row }) => ({
        found: { id, kind, name: row.name, practice, phone: row.phone },
        why: sameContact(typed, row),
      }))
      .filter(({ why }) => why.length > 0)
      .sort((a, b) => b.why.length - a.why.length || sure(a.why) - sure(b.why) || (a.found.id < b.found.id ? -1 : 1))
    return { contacts: contacts.slice(0, most).map(({ found, why }) => ({ ...found, why })) }
  },
})

function sure([first]: readonly (typeof sameContactReasons)[number][]): number {
  return first === undefined ? sameContactReasons.length : sameContactReasons.indexOf(first)
}
