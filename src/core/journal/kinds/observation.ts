import { z } from 'zod'
import { shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** What was measured at one moment, in theatre, recovery or the ward. An artefact is marked, never deleted. */
export const observation = defineKind({
  name: 'observation',
  version: 1,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    where: z.enum(['theatre', 'recovery', 'ward']),
    values: z.array(
      z.strictObject({
        what: z.enum([
          'heart-rate',
          'respiratory-rate',
          'oxygen-saturation',
          'end-tidal-co2',
          'systolic',
          'mean',
          'diastolic',
          'temperature',
          'vapour',
        ]),
        value: storedQuantity('/min', '%', 'mm[Hg]', 'Cel', '%{vol}'),
        method: shortText.nullable(),
        artefact: z.boolean(),
      }),
    ),
    pain: z.strictObject({ scale: shortText, score: z.int().min(0), outOf: z.int().min(1) }).nullable(),
    /** First events after anaesthesia that the record waits for. */
    first: z.enum(['blink', 'sternal', 'normal-temperature', 'eaten', 'walked']).nullable(),
    text: text.nullable(),
  }),
  example: {
    where: 'theatre',
    values: [
      { what: 'heart-rate', value: { value: '92', unit: '/min' }, method: 'ECG', artefact: false },
      { what: 'mean', value: { value: '74', unit: 'mm[Hg]' }, method: 'oscillometric, left forelimb', artefact: false },
    ],
    pain: null,
    first: null,
    text: null,
  },
})
