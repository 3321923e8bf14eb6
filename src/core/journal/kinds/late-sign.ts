import { z } from 'zod'
import { lateSigns } from '#core/late/late-sign-names.ts'
import { day, entryId, id, shortText, side, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

const stream = z
  .string()
  .max(200)
  .regex(/^case:[\w.-]+$/)

/**
 * To which operated ear a late sign belongs that was told in this file, as a person said who saw what was offered. It
 * joins no files: the late event stands at the ear, in the file that is named.
 */
export const lateSign = defineKind({
  name: 'late-sign',
  version: 2,
  subjects: ['animal'],
  body: z
    .strictObject({
      /** The call it was told in. */
      told: entryId,
      signs: z.array(z.enum(lateSigns)).min(1),
      belongs: z.enum(['operated-ear', 'none', 'unsure', 'not-looked']),
      /** The ears that were offered, each with the reasons and doubts in the words that were shown. */
      offered: z.array(z.strictObject({ file: stream, operation: id, side, operated: day, words: text })).max(50),
      chosen: z.strictObject({ file: stream, operation: id, side, event: entryId }).nullable(),
      because: shortText.nullable(),
    })
    .refine(({ belongs, chosen }) => (belongs === 'operated-ear') === (chosen !== null), {
      path: ['chosen'],
      message: 'must name the ear when it belongs to one, and none otherwise',
    }),
  /** Version 1 had no word for a complaint in which none of the known signs is heard. */
  upcasts: { 1: (older) => older },
  naturalKey: ({ told }) => told,
  example: {
    told: '0190a7c2-0000-7000-8000-000000000002',
    signs: ['draining-tract'],
    belongs: 'operated-ear',
    offered: [
      {
        file: 'case:0042',
        operation: 'operation-42',
        side: 'LEFT',
        operated: '2025-01-14',
        words: 'Because of: the same chip but for two digits that changed places. Against it: another owner.',
      },
    ],
    chosen: {
      file: 'case:0042',
      operation: 'operation-42',
      side: 'LEFT',
      event: '0190a7c2-0000-7000-8000-000000000003',
    },
    because: null,
  },
})
