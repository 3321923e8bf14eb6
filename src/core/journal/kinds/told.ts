import { z } from 'zod'
import { entryId, id, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A person outside the clinic was told what an entry says; closes the loop of a result. */
export const told = defineKind({
  name: 'told',
  version: 2,
  subjects: ['animal', 'ear'],
  body: z.strictObject({
    about: entryId,
    who: z.enum(['owner', 'referring-vet', 'carer']),
    contact: id,
    by: z.enum(['phone', 'in-person', 'letter', 'email', 'owner-link']),
    text: text.nullable(),
  }),
  /** Version 1 did not know the person who cares for the animal in place of the owner. */
  upcasts: { 1: (older) => older },
  example: {
    about: '0190a7c2-0000-7000-8000-000000000002',
    who: 'owner',
    contact: 'contact-1',
    by: 'phone',
    text: null,
  },
})
