import { z } from 'zod'
import { id, shortText, side, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** `not-recorded`: of an entry of before that was asked. */
export const answeredBy = ['owner-link', 'phone', 'in-person', 'not-recorded'] as const

/** What the owner answered to our questions: the sentence as it was asked, in its edition and language, and what was chosen. */
export const ownerAnswer = defineKind({
  name: 'owner-answer',
  version: 2,
  subjects: ['animal'],
  body: z.strictObject({
    questionnaire: shortText,
    edition: shortText,
    /** The time of asking, like `month-12`; null in entries of version 1. */
    occasion: shortText.nullable(),
    /** The operated ears it was asked about. */
    ears: z.array(z.strictObject({ side, operation: id })).max(10),
    by: z.enum(answeredBy),
    contact: id.nullable(),
    language: z
      .string()
      .regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'must be a language tag like en or pt-BR')
      .nullable(),
    /** False: saved to go on later. What is already in it counts as told. */
    finished: z.boolean(),
    /** What was left out stands nowhere. */
    answers: z
      .array(
        z.strictObject({
          question: shortText,
          /** Null for a question about the animal. */
          side: side.nullable(),
          answer: text,
          /** The question and the answer in the words that were shown; null for an answer in own words, and in version 1. */
          asked: text.nullable(),
          said: text.nullable(),
        }),
      )
      .min(1),
  }),
  upcasts: {
    1: (older) => {
      const body = older as { answers: readonly { question: string; answer: string }[] }
      const none = { occasion: null, ears: [], by: 'not-recorded', contact: null, language: null, finished: true }
      const answers = body.answers.map((one) => ({ ...one, side: null, asked: null, said: null }))
      return { ...body, ...none, answers }
    },
  },
  example: {
    questionnaire: 'twelve-months',
    edition: '1',
    occasion: 'month-12',
    ears: [{ side: 'LEFT', operation: 'operation-1' }],
    by: 'owner-link',
    contact: 'contact-1',
    language: 'en',
    finished: true,
    answers: [
      {
        question: 'swelling',
        side: 'LEFT',
        answer: 'cannot-tell',
        asked: 'Is there a lump or a swelling at the LEFT ear?',
        said: 'I cannot tell',
      },
    ],
  },
})
