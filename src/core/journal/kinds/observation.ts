import { z } from 'zod'
import { shortText, side, text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** What was measured at one moment, in theatre, recovery or the ward. An artefact is marked, never deleted. */
export const observation = defineKind({
  name: 'observation',
  version: 2,
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
          'fluids',
        ]),
        value: storedQuantity('/min', '%', 'mm[Hg]', 'Cel', '%{vol}', 'mL/h'),
        method: shortText.nullable(),
        artefact: z.boolean(),
      }),
    ),
    pain: z.strictObject({ scale: shortText, score: z.int().min(0), outOf: z.int().min(1) }).nullable(),
    /** First events after anaesthesia that the record waits for. */
    first: z.enum(['blink', 'sternal', 'normal-temperature', 'eaten', 'walked']).nullable(),
    /** Of the first blink: whose eye it was; null where nobody said so. */
    side: side.nullable(),
    /** Why nothing could be measured at this moment; null where something was. */
    unmeasured: text.nullable(),
    text: text.nullable(),
  }),
  /** Version 1 did not ask which eye blinked, nor why nothing was measured. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), side: null, unmeasured: null }) },
  example: {
    where: 'theatre',
    values: [
      { what: 'heart-rate', value: { value: '92', unit: '/min' }, method: 'ECG', artefact: false },
      { what: 'mean', value: { value: '74', unit: 'mm[Hg]' }, method: 'oscillometric, left forelimb', artefact: false },
    ],
    pain: null,
    first: null,
    side: null,
    unmeasured: null,
    text: null,
  },
})
