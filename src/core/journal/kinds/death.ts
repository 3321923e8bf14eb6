import { z } from 'zod'
import { text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

/** Ends everything owed by or to the owner, cancels the calendar and closes the questionnaire. */
export const death = defineKind({
  name: 'death',
  version: 2,
  subjects: ['animal'],
  body: z.strictObject({
    how: z.enum(['died', 'euthanasia']),
    cause: text,
    relatedToEar: z.enum(['yes', 'possibly', 'no', 'unknown']),
    /** Whether it is put down to the operation or the anaesthetic: an ear may have nothing to do with a death on the table. */
    relatedToOperation: z.enum(['yes', 'no', 'unknown']),
    heardFrom: z.enum(['us', 'owner', 'referring-vet']),
  }),
  /** Version 1 asked only whether the ear had to do with it. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), relatedToOperation: 'unknown' }) },
  naturalKey: (_, subject) => (subject.kind === 'animal' ? subject.animal : undefined),
  example: {
    how: 'euthanasia',
    cause: 'Kidney failure',
    relatedToEar: 'no',
    relatedToOperation: 'no',
    heardFrom: 'referring-vet',
  },
})
