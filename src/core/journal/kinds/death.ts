import { z } from 'zod'
import { text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Ends everything owed by or to the owner, cancels the calendar and closes the questionnaire. */
export const death = defineKind({
  name: 'death',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    how: z.enum(['died', 'euthanasia']),
    cause: text,
    relatedToEar: z.enum(['yes', 'possibly', 'no', 'unknown']),
    heardFrom: z.enum(['us', 'owner', 'referring-vet']),
  }),
  naturalKey: (_, subject) => (subject.kind === 'animal' ? subject.animal : undefined),
  example: { how: 'euthanasia', cause: 'Kidney failure', relatedToEar: 'no', heardFrom: 'referring-vet' },
})
