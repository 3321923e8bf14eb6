import { z } from 'zod'
import { id, moment, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A swelling, abscess or tract that came late: it belongs to the index operation, whenever and wherever it was seen. */
export const lateEvent = defineKind({
  name: 'late-event',
  version: 2,
  subjects: ['ear'],
  body: z.strictObject({
    what: z.enum(['swelling', 'abscess', 'draining-tract', 'jaw-pain', 'tumour-again', 'other']),
    operation: id,
    firstSeen: moment,
    seenBy: z.enum(['us', 'referring-vet', 'owner', 'elsewhere']),
    needed: z.enum(['nothing', 'drug', 'imaging', 'operation', 'operation-done', 'not-decided']),
    text: text.nullable(),
  }),
  /** Version 1 could not say that the operation was done; what it needed stands, and a need is no operation. */
  upcasts: { 1: (older) => older },
  example: {
    what: 'draining-tract',
    operation: 'operation-1',
    firstSeen: { at: '2026-09-01T00:00:00.000Z', zone: 'Europe/London', precision: 'month', by: 'person' },
    seenBy: 'referring-vet',
    needed: 'imaging',
    text: null,
  },
})
