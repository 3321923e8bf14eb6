import { z } from 'zod'
import { text } from '../answers.ts'
import { defineKind } from '../kind.ts'

const body = z.strictObject({
  /** Dogs are typed for DEA 1, cats for A and B; the other system stays unanswered. */
  system: z.enum(['dea-1', 'ab']),
  dea1: z.enum(['negative', 'weak-positive', 'strong-positive', 'not-typed']),
  ab: z.enum(['A', 'B', 'AB', 'unknown']),
  method: z.enum(['card', 'gel-or-tube', 'laboratory', 'as-told', 'not-stated']),
  text: text.nullable(),
})

/** The blood group of the animal. A cat that nobody typed stays unknown; no group is ever assumed. */
export const bloodType = defineKind({
  name: 'blood-type',
  version: 1,
  subjects: ['animal'],
  body: body
    .refine(({ system, ab }) => system === 'ab' || ab === 'unknown', {
      path: ['ab'],
      message: 'must stay unknown where DEA 1 was typed',
    })
    .refine(({ system, dea1 }) => system === 'dea-1' || dea1 === 'not-typed', {
      path: ['dea1'],
      message: 'must stay not typed where A and B were typed',
    }),
  example: { system: 'dea-1', dea1: 'negative', ab: 'unknown', method: 'card', text: null },
})
