import { z } from 'zod'
import { procedureIds } from '#core/animal/procedure.ts'
import { id, money, shortText, side, teachBack } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What was agreed is bound to this plan by its fingerprint: change any field and consent is asked again. */
export const planSchema = z.strictObject({
  ears: z
    .array(z.strictObject({ side, procedure: z.enum(procedureIds) }))
    .min(1)
    .max(2),
  surgeon: id,
  ceiling: money,
  leaflet: shortText,
  language: shortText,
})

/** Estimate, limits and consent, given by somebody who may. */
export const agreement = defineKind({
  name: 'agreement',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    plan: planSchema,
    fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
    estimate: z.strictObject({ low: money, high: money }),
    consentBy: id,
    authority: z.enum(['owner', 'for-the-owner']),
    resuscitate: z.enum(['yes', 'no', 'only-drugs', 'not-decided']),
    mayExtend: z.enum(['yes', 'phone-first', 'no']),
    photographs: z.enum(['record-only', 'teaching', 'no']),
    teachBack,
    explainedBy: id,
  }),
  example: {
    plan: {
      ears: [{ side: 'LEFT', procedure: 'teca-lbo' }],
      surgeon: 'person-surgeon',
      ceiling: { amount: '3400.00', currency: 'GBP' },
      leaflet: 'teca-lbo 1',
      language: 'en',
    },
    fingerprint: '0000000000000000000000000000000000000000000000000000000000000000',
    estimate: { low: { amount: '2600.00', currency: 'GBP' }, high: { amount: '3400.00', currency: 'GBP' } },
    consentBy: 'contact-1',
    authority: 'owner',
    resuscitate: 'yes',
    mayExtend: 'phone-first',
    photographs: 'record-only',
    teachBack: [{ item: 'which-ear', answer: 'own-words' }],
    explainedBy: 'person-surgeon',
  },
})
