import { z } from 'zod'
import { entryId } from '../answers.ts'
import { subjectSchema } from '../entry.ts'
import { defineKind } from '../kind.ts'

/** An entry stood with the wrong animal: this withdraws it there and names its copy in the right place. */
export const refile = defineKind({
  name: 'refile',
  version: 1,
  subjects: ['animal', 'household', 'ear', 'operation', 'clinic'],
  body: z.strictObject({ toStream: z.string().min(1), toSubject: subjectSchema, copy: entryId }),
  example: {
    toStream: 'case:0042',
    toSubject: { kind: 'ear', animal: 'animal-0042', side: 'RIGHT' },
    copy: '0190a7c2-0000-7000-8000-000000000005',
  },
})
