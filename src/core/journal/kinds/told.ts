import { z } from 'zod'
import { entryId, id, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A person outside the clinic was told what an entry says; closes the loop of a result. */
export const told = defineKind({
  name: 'told',
  version: 1,
  subjects: ['animal', 'ear'],
  body: z.strictObject({
    about: entryId,
    who: z.enum(['owner', 'referring-vet']),
    contact: id,
    by: z.enum(['phone', 'in-person', 'letter', 'email', 'owner-link']),
    text: text.nullable(),
  }),
  example: {
    about: '0190a7c2-0000-7000-8000-000000000002',
    who: 'owner',
    contact: 'contact-1',
    by: 'phone',
    text: null,
  },
})
