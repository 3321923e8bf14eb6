import { z } from 'zod'
import { day, id, moment, money, shortText } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind, keyOf } from '../kind.ts'

/** What money goes to, in the order of the course. */
export const costPart = z.enum([
  'work-up',
  'theatre',
  'laboratory',
  'ward',
  'rechecks',
  'second-ear',
  'complications',
  'operation-again',
  'other',
])

/** What it may cost, line by line from low to high, and whether somebody accepted it. Every version is an entry. */
export const estimate = defineKind({
  name: 'estimate',
  version: 2,
  subjects: ['animal'],
  body: z.strictObject({
    /** Counted up by hand, because the owner holds it on paper. */
    edition: z.int().min(1).max(99),
    lines: z
      .array(
        z.strictObject({
          part: costPart,
          what: shortText,
          low: money,
          high: money,
        }),
      )
      .min(1),
    /** What is asked for beforehand. */
    deposit: money.nullable(),
    /** What came in of it. */
    paid: z.strictObject({ amount: money, on: moment }).nullable(),
    ceiling: money,
    validUntil: day,
    givenBy: id,
    /** Null: nobody has answered. Silence is never a yes. */
    answer: z.strictObject({ said: z.enum(['accepted', 'declined']), by: id, on: moment }).nullable(),
  }),
  /** Version 1 did not say whether a deposit was paid. */
  upcasts: { 1: (older) => ({ ...(older as { readonly [field: string]: Json }), paid: null }) },
  naturalKey: (body) => keyOf('edition', String(body.edition)),
  example: {
    edition: 1,
    lines: [
      {
        part: 'theatre',
        what: 'Operation and anaesthetic',
        low: { amount: '1800.00', currency: 'GBP' },
        high: { amount: '2300.00', currency: 'GBP' },
      },
      {
        part: 'laboratory',
        what: 'Histology and culture',
        low: { amount: '240.50', currency: 'GBP' },
        high: { amount: '310.75', currency: 'GBP' },
      },
    ],
    deposit: { amount: '500.00', currency: 'GBP' },
    paid: null,
    ceiling: { amount: '3000.00', currency: 'GBP' },
    validUntil: '2026-05-01',
    givenBy: 'person-desk',
    answer: null,
  },
})
