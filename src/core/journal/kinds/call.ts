import { z } from 'zod'
import { id, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A try to speak with somebody. "Nobody reached" is a result with a date, never "fine". */
export const call = defineKind({
  name: 'call',
  version: 2,
  subjects: ['animal', 'household'],
  body: z.strictObject({
    contact: id,
    direction: z.enum(['we-called', 'they-called']),
    channel: z.enum(['phone', 'message', 'email', 'letter']),
    reached: z.enum(['yes', 'no', 'message-left']),
    about: z.enum(['first-call', 'ward', 'result', 'check', 'twelve-months', 'estimate', 'worry', 'other']),
    text: text.nullable(),
  }),
  /** Version 1 had no word for the daily call out of the ward. */
  upcasts: { 1: (older) => older },
  example: {
    contact: 'contact-1',
    direction: 'we-called',
    channel: 'phone',
    reached: 'yes',
    about: 'first-call',
    text: 'Eating, wears the collar, eye drops go well.',
  },
})
