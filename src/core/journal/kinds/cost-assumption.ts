import { z } from 'zod'
import { toldIds } from '#core/choice/told-ids.ts'
import { id, money, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

const times = z.int().min(0).max(366)

/** What a year of one option was reckoned from for this ear: what, how often, at which of the clinic's own prices. */
export const costAssumption = defineKind({
  name: 'cost-assumption',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    option: z.enum(toldIds),
    lines: z
      .array(
        z.strictObject({
          what: shortText,
          atLeast: times,
          atMost: times,
          every: z.enum(['year', 'month']),
          /** Row of the price list it was taken from, with the price as it stood; null: no price is kept for it. */
          price: z.strictObject({ row: id, low: money, high: money }).nullable(),
        }),
      )
      .min(1),
  }),
  example: {
    option: 'medical-control',
    lines: [
      {
        what: 'Check of the ear',
        atLeast: 4,
        atMost: 8,
        every: 'year',
        price: {
          row: 'price-check',
          low: { amount: '40.00', currency: 'GBP' },
          high: { amount: '60.00', currency: 'GBP' },
        },
      },
      { what: 'Ear drops', atLeast: 1, atMost: 2, every: 'month', price: null },
    ],
  },
})
