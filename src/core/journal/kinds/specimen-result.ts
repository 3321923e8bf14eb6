import { z } from 'zod'
import { entryId, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What the laboratory wrote, raw, with comparators as printed. Reading it is another entry. */
export const specimenResult = defineKind({
  name: 'specimen-result',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    specimen: entryId,
    status: z.enum(['preliminary', 'final', 'corrected']),
    growth: z.enum(['none', 'growth', 'not-a-culture']),
    isolates: z.array(
      z.strictObject({
        organism: shortText,
        results: z.array(z.strictObject({ drug: shortText, raw: shortText })),
      }),
    ),
    text: text.nullable(),
  }),
  example: {
    specimen: '0190a7c2-0000-7000-8000-000000000001',
    status: 'final',
    growth: 'growth',
    isolates: [
      { organism: 'Staphylococcus pseudintermedius', results: [{ drug: 'marbofloxacin', raw: '<=0.5 mg/L' }] },
    ],
    text: null,
  },
})
