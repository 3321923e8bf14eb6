import { z } from 'zod'
import { id, text } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'

/** One tap at a checkpoint of the operation: done with its coded answers, or not done with the reason. */
export const theatreStamp = defineKind({
  name: 'theatre-stamp',
  version: 1,
  subjects: ['operation'],
  body: z.strictObject({
    /** A checkpoint id of the procedure (`k1-skin` …) or a clock mark (`anaesthesia-start`, `incision`, `closed`, `tube-out`). */
    checkpoint: id,
    answer: z.enum(['done', 'not-done']),
    /** Coded answers the procedure names for this checkpoint, like `nerve: seen`. */
    detail: z.record(z.string().regex(/^[a-z-]+$/), z.string().min(1).max(200)),
    text: text.nullable(),
  }),
  naturalKey: (body, subject) =>
    subject.kind === 'operation' ? keyOf(subject.operation, body.checkpoint) : body.checkpoint,
  example: {
    checkpoint: 'k3-facial-nerve',
    answer: 'done',
    detail: { nerve: 'seen', state: 'free', 'minutes-held': '0' },
    text: null,
  },
})
