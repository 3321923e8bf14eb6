import { z } from 'zod'
import { entryId, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What somebody here answered to a note of an owner; the owner reads it behind the private link, with name and date. */
export const ownerReply = defineKind({
  name: 'owner-reply',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({ note: entryId, text }),
  example: {
    note: '0190a7c2-0000-7000-8000-000000000002',
    text: 'A few drops on the first days are usual. Please send a picture tomorrow, and phone if it drips.',
  },
})
