import { z } from 'zod'
import { defineKind } from '../kind.ts'

/** Says that another case file is the same animal. Nothing is moved: withdrawing this entry un-merges. */
export const merge = defineKind({
  name: 'merge',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    otherStream: z
      .string()
      .max(200)
      .regex(/^case:[\w.-]+$/),
    otherAnimal: z.string().min(1),
    matchedOn: z.array(z.enum(['chip', 'owner', 'name', 'birth-date'])).min(1),
    secondPerson: z.string().min(1),
  }),
  naturalKey: (body) => body.otherStream,
  example: {
    otherStream: 'case:0042',
    otherAnimal: 'animal-0042',
    matchedOn: ['chip', 'owner'],
    secondPerson: 'person-nurse',
  },
})
