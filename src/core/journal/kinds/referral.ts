import { z } from 'zod'
import { id, shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

export const redFlags = [
  'head-tilt',
  'falling',
  'drooped-face',
  'mouth-will-not-open',
  'swelling-under-ear',
  'not-eating',
  'severe-pain',
  'bleeding-mass',
  'eye-red-or-shut',
] as const

/** The first call: what was said, how urgent and why in words. The side is as reported, never a fact. */
export const referral = defineKind({
  name: 'referral',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    caller: z.enum(['owner', 'referring-vet', 'other']),
    contact: id.nullable(),
    reportedSide: z.enum(['LEFT', 'RIGHT', 'BOTH', 'unknown']),
    complaint: text,
    daysOfSigns: z.int().min(0).nullable(),
    signs: z.array(z.strictObject({ sign: z.enum(redFlags), answer: z.enum(['yes', 'no', 'not-asked']) })),
    drugAllergy: z.strictObject({ answer: z.enum(['yes', 'no', 'not-asked']), what: shortText.nullable() }),
    urgency: z.enum(['today', 'this-week', 'routine']),
    because: text,
    mayFetchRecords: z.enum(['yes', 'no', 'not-asked']),
  }),
  example: {
    caller: 'referring-vet',
    contact: 'contact-vet-1',
    reportedSide: 'LEFT',
    complaint: 'Six years of ear disease, canal now closed, painful.',
    daysOfSigns: 2190,
    signs: [
      { sign: 'head-tilt', answer: 'no' },
      { sign: 'drooped-face', answer: 'no' },
      { sign: 'severe-pain', answer: 'yes' },
    ],
    drugAllergy: { answer: 'no', what: null },
    urgency: 'this-week',
    because: 'Painful to touch; no nerve sign reported.',
    mayFetchRecords: 'yes',
  },
})
