import { z } from 'zod'
import { id, text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind, keyOf } from '../kind.ts'

/** One item of a spoken pause: what was answered, who spoke, and who led the pause. */
export const pauseItem = defineKind({
  name: 'pause-item',
  version: 3,
  subjects: ['operation'],
  body: z.strictObject({
    pause: z.enum(['before-anaesthesia', 'before-incision', 'before-second-ear', 'before-leaving']),
    item: id,
    answer: z.enum(['yes', 'no', 'unknown']),
    because: text.nullable(),
    spokenBy: id,
    /** Whoever read the items aloud; null where nobody said so. */
    ledBy: id.nullable(),
  }),
  /** Version 1 did not ask who led the pause; version 2 had no pause between two ears. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), ledBy: null }), 2: (older) => older },
  naturalKey: (body, subject) =>
    subject.kind === 'operation' ? keyOf(subject.operation, body.pause, body.item) : undefined,
  example: {
    pause: 'before-incision',
    item: 'side-spoken-and-pointed',
    answer: 'yes',
    because: null,
    spokenBy: 'person-surgeon',
    ledBy: 'person-nurse',
  },
})
