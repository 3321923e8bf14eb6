import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { outcomeCodes } from '#core/evidence/outcome-code.ts'
import { countUnits } from '#core/evidence/study.ts'
import { day, entryId, id, moment, money, shortText, side, yesNo } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'

const ofHundred = z.int().min(0).max(100).nullable()

/** One number as it was said that day, out of 100; what nobody counted is said without one. */
export const shownNumberSchema = z.strictObject({
  procedure: z.enum(procedureIds),
  outcome: z.enum(outcomeCodes),
  unit: z.enum(countUnits),
  low: ofHundred,
  middle: ofHundred,
  high: ofHundred,
  said: z.string().min(1).max(1_000),
})

/** What was agreed is bound to this plan by its fingerprint: change any field and consent is asked again. */
export const planSchema = z.strictObject({
  ears: z
    .array(z.strictObject({ side, procedure: z.enum(procedureIds) }))
    .min(1)
    .max(2),
  mayExtend: z.enum(['yes', 'phone-first', 'no']),
  /** What exactly may be extended. */
  extension: shortText.nullable(),
  surgeon: id,
  ceiling: money,
  leaflet: shortText,
  language: shortText,
  /** Empty: no numbers are on record, as in every agreement of version 1. */
  numbers: z.array(shownNumberSchema).max(200),
})

/** A line of the hand: x, y, x, y … in a box of 6000 by 2000. */
const strokeSchema = z.strictObject({
  points: z
    .array(z.int().min(0).max(6000))
    .min(2)
    .max(2_400)
    .refine((points) => points.length % 2 === 0, 'must hold an x and a y for every point'),
})

const taught = z.enum(['own-words', 'with-help', 'not-yet'])

/** Estimate, limits and consent, given by somebody who may, on an authority that is written down. */
export const agreement = defineKind({
  name: 'agreement',
  version: 2,
  subjects: ['animal'],
  body: z.strictObject({
    plan: planSchema,
    fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
    /** The accepted estimate behind it, where one is on record. */
    estimate: z.strictObject({ low: money, high: money, entry: entryId.nullable() }),
    consentBy: id,
    authority: z.enum(['owner', 'joint-owner', 'authorised', 'guardian', 'sitter', 'somebody-else', 'for-the-owner']),
    /** How, when and up to what an owner authorised somebody. */
    authorised: z
      .strictObject({
        by: id,
        how: z.enum(['in-writing', 'by-phone']),
        when: moment,
        until: day.nullable(),
        upTo: money.nullable(),
        witness: id.nullable(),
      })
      .nullable(),
    /** Whether it was asked that this is an adult who can decide. */
    soundMind: yesNo,
    given: z.enum(['signed-here', 'signed-on-paper', 'by-phone', 'not-recorded']),
    /** Another of the staff, who heard or saw it. */
    witness: id.nullable(),
    /** Drawn by hand, or the full name typed by the one who agrees. */
    signature: z.strictObject({ strokes: z.array(strokeSchema).max(200), name: shortText.nullable() }).nullable(),
    copy: z.enum(['on-paper', 'by-email', 'not-yet', 'not-recorded']),
    resuscitate: z.enum(['yes', 'no', 'only-drugs', 'not-decided']),
    photographs: z.enum(['record-only', 'teaching', 'no']),
    /** The first answer stays; what came after it was explained again stands beside it. */
    teachBack: z.array(
      z.strictObject({
        item: z.enum(['which-ear', 'two-risks', 'eye-care', 'collar', 'when-to-phone', 'medicines']),
        answer: taught,
        said: shortText.nullable(),
        again: taught.nullable(),
      }),
    ),
    explainedBy: id,
  }),
  upcasts: { 1: fromFirst },
  example: {
    plan: {
      ears: [{ side: 'LEFT', procedure: 'teca-lbo' }],
      mayExtend: 'phone-first',
      extension: 'The bulla may be opened from below.',
      surgeon: 'person-surgeon',
      ceiling: { amount: '3400.00', currency: 'GBP' },
      leaflet: 'owner-leaflet 1',
      language: 'en',
      numbers: [],
    },
    fingerprint: '0000000000000000000000000000000000000000000000000000000000000000',
    estimate: {
      low: { amount: '2600.00', currency: 'GBP' },
      high: { amount: '3400.00', currency: 'GBP' },
      entry: null,
    },
    consentBy: 'contact-1',
    authority: 'owner',
    authorised: null,
    soundMind: 'yes',
    given: 'signed-on-paper',
    witness: null,
    signature: null,
    copy: 'on-paper',
    resuscitate: 'yes',
    photographs: 'record-only',
    teachBack: [{ item: 'which-ear', answer: 'own-words', said: null, again: null }],
    explainedBy: 'person-surgeon',
  },
})

type First = {
  readonly plan: { readonly [field: string]: Json }
  readonly estimate: { readonly [field: string]: Json }
  readonly mayExtend: Json
  readonly teachBack: readonly { readonly [field: string]: Json }[]
}

/** Version 1 bound five fields, and asked neither on what authority nor how consent was given. */
function fromFirst(older: Json): Json {
  const { mayExtend, plan, estimate, teachBack, ...rest } = older as unknown as First
  return {
    ...rest,
    plan: { ...plan, mayExtend, extension: null, numbers: [] },
    estimate: { ...estimate, entry: null },
    authorised: null,
    soundMind: 'not-assessed',
    given: 'not-recorded',
    witness: null,
    signature: null,
    copy: 'not-recorded',
    teachBack: teachBack.map((one) => ({ ...one, said: null, again: null })),
  } as Json
}
