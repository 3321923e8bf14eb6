import { z } from 'zod'
import { columnMeanings } from '#core/laboratory/mapping.ts'
import { id, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** How the tables of one laboratory are read: what each column says, which number of a date is the day, what a bare number is. */
export const laboratoryTable = defineKind({
  name: 'laboratory-table',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    /** As the person who made the mapping calls it. */
    laboratory: id,
    delimiter: z.enum(['comma', 'semicolon', 'tab', 'bar']),
    columns: z
      .array(
        z.strictObject({
          heading: shortText,
          means: z.enum(columnMeanings),
          /** Of a column that holds one drug. */
          drug: shortText.nullable(),
          unit: z.enum(['mg/L', 'mm']).nullable(),
        }),
      )
      .min(2),
    dates: z.enum(['day-first', 'month-first']).nullable(),
    unit: z.enum(['mg/L', 'mm']).nullable(),
    comma: z.enum(['decimal', 'thousands']).nullable(),
  }),
  naturalKey: ({ laboratory }) => laboratory,
  example: {
    laboratory: 'Northfold Laboratory',
    delimiter: 'semicolon',
    columns: [
      { heading: 'accession', means: 'accession', drug: null, unit: null },
      { heading: 'organism', means: 'organism', drug: null, unit: null },
      { heading: 'Marbofloxacin MIC', means: 'drug-values', drug: 'Marbofloxacin', unit: 'mg/L' },
    ],
    dates: 'day-first',
    unit: 'mg/L',
    comma: null,
  },
})
