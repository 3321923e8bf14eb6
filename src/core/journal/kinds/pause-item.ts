import { z } from 'zod'
import { id, text } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'

/** One item of a spoken pause: what was answered, and who spoke. */
export const pauseItem = defineKind({
  name: 'pause-item',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({
    pause: z.enum(['before-anaesthesia', 'before-incision', 'before-leaving']),
    item: id,
    answer: z.enum(['yes', 'no', 'unknown']),
    because: text.nullable(),
    spokenBy: id,
  }),
  naturalKey: (body, subject) =>
    subject.kind === 'operation' ? keyOf(subject.operation, body.pause, body.item) : undefined,
  example: {
    pause: 'before-incision',
    item: 'side-spoken-and-pointed',
    answer: 'yes',
    because: null,
    spokenBy: 'person-surgeon',
  },
})
