import { z } from 'zod'
import { entryId, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A second person worked it out again and agrees, or does not; or nobody was there, which is printed and audited. */
export const secondCheck = defineKind({
  name: 'second-check',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    of: z.array(entryId).min(1),
    verdict: z.enum(['agrees', 'disagrees', 'nobody-available']),
    text: text.nullable(),
  }),
  example: { of: ['0190a7c2-0000-7000-8000-000000000004'], verdict: 'agrees', text: null },
})
