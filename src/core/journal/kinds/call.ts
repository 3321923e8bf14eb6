import { z } from 'zod'
import { id, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A try to speak with somebody. "Nobody reached" is a result with a date, never "fine". */
export const call = defineKind({
  name: 'call',
  version: 1,
  subjects: ['animal', 'household'],
  body: z.strictObject({
    contact: id,
    direction: z.enum(['we-called', 'they-called']),
    channel: z.enum(['phone', 'message', 'email', 'letter']),
    reached: z.enum(['yes', 'no', 'message-left']),
    about: z.enum(['first-call', 'result', 'check', 'twelve-months', 'estimate', 'worry', 'other']),
    text: text.nullable(),
  }),
  example: {
    contact: 'contact-1',
    direction: 'we-called',
    channel: 'phone',
    reached: 'yes',
    about: 'first-call',
    text: 'Eating, wears the collar, eye drops go well.',
  },
})
