import { z } from 'zod'
import { entryId } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Orders that the body of one entry is erased. Its header and the hash of its body stay, so the chain still verifies. */
export const erasure = defineKind({
  name: 'erasure',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({ entry: entryId, because: z.string().min(3), orderedBy: z.string().min(1) }),
  example: {
    entry: '0190a7c2-0000-7000-8000-000000000001',
    because: 'The owner asked for it and no retention rule stands against it.',
    orderedBy: 'person-manager',
  },
})
