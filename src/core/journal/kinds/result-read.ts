import { z } from 'zod'
import { entryId, id, text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

/**
 * Somebody read a result, and decided, or said that the decision waits. Silence is never success: until this entry
 * exists the result is owed, and after `decide-later` the decision is.
 */
export const resultRead = defineKind({
  name: 'result-read',
  version: 2,
  subjects: ['ear'],
  body: z.strictObject({
    result: entryId,
    decision: z.enum(['no-change', 'change', 'stop', 'sample-again', 'decide-later']),
    /** The edition of breakpoints it was judged by; an old case keeps it. Null where none was used. */
    edition: id.nullable(),
    text,
  }),
  /** Version 1 knew no breakpoints. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), edition: null }) },
  example: {
    result: '0190a7c2-0000-7000-8000-000000000002',
    decision: 'no-change',
    edition: 'clsi-vet01s-7',
    text: 'Susceptible to the drug already given; finish the course.',
  },
})
