import { z } from 'zod'
import { text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** Where the operated ear stands after a year. "Unknown" after three tries is a result. */
export const twelveMonths = defineKind({
  name: 'twelve-months',
  version: 1,
  subjects: ['ear'],
  body: z.strictObject({
    status: z.enum(['solved', 'improved', 'failed', 'unknown']),
    source: z.enum(['our-examination', 'referring-vet', 'owner', 'nobody-reached']),
    tries: z.int().min(0),
    face: z.enum(['normal', 'weak', 'absent', 'unknown']),
    wouldChooseAgain: z.enum(['yes', 'no', 'unknown']),
    text: text.nullable(),
  }),
  example: {
    status: 'solved',
    source: 'our-examination',
    tries: 1,
    face: 'normal',
    wouldChooseAgain: 'yes',
    text: null,
  },
})
