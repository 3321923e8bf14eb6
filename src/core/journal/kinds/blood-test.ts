import { z } from 'zod'
import { id, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** One line of the report, as it is printed: number or words, unit, flag and range are never converted. */
export const bloodResult = z.strictObject({
  analyte: shortText,
  /** With its comparator, in the digits of the report: `<0.5`, `5.2`, `clumped`. */
  printed: shortText,
  unit: shortText.nullable(),
  flag: shortText.nullable(),
  range: shortText.nullable(),
})

/** Blood that was measured, line by line as printed. It happened when the blood was drawn. */
export const bloodTest = defineKind({
  name: 'blood-test',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    panel: z.enum(['haematology', 'chemistry', 'clotting', 'other']),
    measured: z.enum(['in-house', 'laboratory']),
    laboratory: id.nullable(),
    results: z.array(bloodResult).min(1),
    text: text.nullable(),
  }),
  example: {
    panel: 'haematology',
    measured: 'in-house',
    laboratory: null,
    results: [
      { analyte: 'PCV', printed: '44', unit: '%', flag: null, range: '37 - 55' },
      { analyte: 'Platelets', printed: '312', unit: '10^9/L', flag: null, range: '148 - 484' },
    ],
    text: null,
  },
})
