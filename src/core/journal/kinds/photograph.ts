import { z } from 'zod'
import { shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A picture, named by the hash in the header's attachments; the file may arrive after the entry. */
export const photograph = defineKind({
  name: 'photograph',
  version: 1,
  subjects: ['animal', 'ear', 'operation'],
  body: z.strictObject({
    shows: shortText,
    sideInPicture: z.enum(['LEFT', 'RIGHT', 'none']),
    takenBy: z.enum(['us', 'owner', 'referring-vet', 'laboratory']),
  }),
  example: { shows: 'Wound on day 12', sideInPicture: 'LEFT', takenBy: 'owner' },
})
