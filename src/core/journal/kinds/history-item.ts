import { z } from 'zod'
import { moment, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** One dated thing of the past: a course of disease, a test, an earlier operation, an anaesthetic. */
export const historyItem = defineKind({
  name: 'history-item',
  version: 2,
  subjects: ['animal', 'ear'],
  body: z.strictObject({
    topic: z.enum([
      'ear-disease',
      'skin',
      'diet-trial',
      'hormones',
      'earlier-ear-surgery',
      'ear-injury',
      'closed-from-birth',
      'culture',
      'anaesthetic',
      'hearing',
      'heart-or-airway',
      'other',
    ]),
    text,
    from: moment.nullable(),
    until: moment.nullable(),
    source: z.enum(['owner', 'referring-vet', 'records']),
  }),
  /** Version 1 had no words for an injury or a canal closed from birth; what it said stands. */
  upcasts: { 1: (older) => older },
  example: {
    topic: 'skin',
    text: 'Itch every summer; diet trial of eight weeks made no difference.',
    from: { at: '2019-01-01T00:00:00.000Z', zone: 'Europe/London', precision: 'year', by: 'person' },
    until: null,
    source: 'owner',
  },
})
