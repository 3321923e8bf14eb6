import { z } from 'zod'
import { day, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What becomes of the ear that is not operated. The entry is about that ear. */
export const otherEarPlan = defineKind({
  name: 'other-ear-plan',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    plan: z.enum(['nothing', 'watch', 'treat', 'operate-later']),
    because: shortText,
    reviewOn: day.nullable(),
  }),
  example: { plan: 'watch', because: 'Waxy, open, not painful.', reviewOn: '2026-05-04' },
})
