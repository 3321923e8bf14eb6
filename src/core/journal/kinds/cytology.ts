import { z } from 'zod'
import { id, text, yesNo } from '../answers.ts'
import { defineKind } from '../kind.ts'

const seen = z.enum(['none', 'few', 'some', 'many', 'not-assessed'])

/** What was seen of one ear under the microscope. "None" was looked for; "not assessed" was not. */
export const cytology = defineKind({
  name: 'cytology',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    site: z.enum(['canal', 'bulla', 'mass', 'node', 'skin']),
    cocci: seen,
    rods: seen,
    yeast: seen,
    inflammatoryCells: seen,
    /** Cells that belong in no ear: a tumour is asked of the tissue, never of the smear alone. */
    oddCells: seen,
    biofilm: yesNo,
    text: text.nullable(),
    /** In the people register, or the name of whoever read it elsewhere. */
    readBy: id,
  }),
  example: {
    site: 'canal',
    cocci: 'few',
    rods: 'many',
    yeast: 'none',
    inflammatoryCells: 'many',
    oddCells: 'none',
    biofilm: 'not-assessed',
    text: 'Rods inside neutrophils.',
    readBy: 'person-nurse',
  },
})
