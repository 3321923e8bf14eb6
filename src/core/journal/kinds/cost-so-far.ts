import { z } from 'zod'
import { id, money, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { costPart } from './estimate.ts'

/** What something has cost, as it comes in during the stay, so that the owner is rung before the ceiling is passed. */
export const costSoFar = defineKind({
  name: 'cost-so-far',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    part: costPart,
    what: shortText,
    amount: money,
    /** Nothing more of this part is to come. */
    finished: z.boolean(),
    by: id,
  }),
  example: {
    part: 'ward',
    what: 'First two nights',
    amount: { amount: '420.00', currency: 'GBP' },
    finished: false,
    by: 'person-desk',
  },
})
