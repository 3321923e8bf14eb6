import { z } from 'zod'
import { entryId, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Somebody read a result and decided. Silence is never success: until this entry exists the result is owed. */
export const resultRead = defineKind({
  name: 'result-read',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({ result: entryId, decision: z.enum(['no-change', 'change', 'stop', 'sample-again']), text }),
  example: {
    result: '0190a7c2-0000-7000-8000-000000000002',
    decision: 'no-change',
    text: 'Susceptible to the drug already given; finish the course.',
  },
})
