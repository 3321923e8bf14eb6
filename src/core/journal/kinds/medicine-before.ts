import { z } from 'zod'
import { id, moment, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** A medicine given before us, dated and with its effect. Its stop date feeds the interaction checks. */
export const medicineBefore = defineKind({
  name: 'medicine-before',
  version: 1,
  subjects: ['animal', 'ear'],
  body: z.strictObject({
    /** As written on the letter or the box. */
    written: shortText,
    /** Our substance id, when somebody has settled which active it is. */
    substance: id.nullable(),
    route: z.enum(['ear', 'oral', 'injection', 'depot-injection', 'skin', 'eye', 'unknown']),
    dose: shortText.nullable(),
    from: moment.nullable(),
    until: moment.nullable(),
    ongoing: z.boolean(),
    effect: z.enum(['better', 'partly', 'none', 'worse', 'unknown']),
  }),
  example: {
    written: 'Prednisolone 5 mg tablets',
    substance: 'prednisolone',
    route: 'oral',
    dose: '1 tablet daily',
    from: { at: '2026-01-05T00:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' },
    until: { at: '2026-01-20T00:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' },
    ongoing: false,
    effect: 'partly',
  },
})
