import { z } from 'zod'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** What the animal weighed, how it was weighed, and what the scale said when it spoke pounds. */
export const weight = defineKind({
  name: 'weight',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    weight: storedQuantity('kg'),
    /** The value as typed, when it was not kilograms. */
    typed: storedQuantity('[lb_av]', 'g').nullable(),
    how: z.enum(['scale', 'estimated', 'reported']),
    bodyCondition: z.int().min(1).max(9).nullable(),
  }),
  example: { weight: { value: '12.4', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 },
})
