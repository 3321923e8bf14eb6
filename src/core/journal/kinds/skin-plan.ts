import { z } from 'zod'
import { day, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What is done against the skin disease behind the ear, by whom, and when it is looked at again. */
export const skinPlan = defineKind({
  name: 'skin-plan',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    disease: z.enum(['food-allergy', 'atopy', 'hormones', 'parasites', 'other', 'none-found', 'not-known-yet']),
    measures: z.array(
      z.strictObject({
        what: shortText,
        by: z.enum(['us', 'referring-vet', 'dermatologist', 'owner']),
      }),
    ),
    text: text.nullable(),
    reviewOn: day.nullable(),
  }),
  example: {
    disease: 'atopy',
    measures: [
      { what: 'Oclacitinib through the pollen months', by: 'referring-vet' },
      { what: 'Bath every week', by: 'owner' },
    ],
    text: null,
    reviewOn: '2026-06-01',
  },
})
