import { z } from 'zod'
import { id, moment, shortText } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What was taken, from where, on which antibiotics. It is owed until the owner has been told. */
export const specimen = defineKind({
  name: 'specimen',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    site: z.enum(['canal', 'bulla-on-entry', 'bulla-after-lavage', 'canal-tissue', 'mass', 'node']),
    tests: z.array(z.enum(['cytology', 'aerobic-culture', 'anaerobic-culture', 'fungal-culture', 'histology'])).min(1),
    label: shortText,
    laboratory: id.nullable(),
    antibioticsOnBoard: shortText.nullable(),
    expectedBy: moment.nullable(),
    operation: id.nullable(),
  }),
  naturalKey: (body) => body.label,
  example: {
    site: 'bulla-on-entry',
    tests: ['aerobic-culture', 'anaerobic-culture'],
    label: 'B-1',
    laboratory: 'contact-lab',
    antibioticsOnBoard: null,
    expectedBy: null,
    operation: 'operation-1',
  },
})
