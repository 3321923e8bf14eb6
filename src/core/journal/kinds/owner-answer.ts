import { z } from 'zod'
import { shortText, text } from '../answers.ts'
import { defineKind } from '../kind.ts'

/** What the owner answered to our questions, in the version that was shown. */
export const ownerAnswer = defineKind({
  name: 'owner-answer',
  version: 1,
  subjects: ['animal'],
  body: z.strictObject({
    questionnaire: shortText,
    edition: shortText,
    answers: z.array(z.strictObject({ question: shortText, answer: text })).min(1),
  }),
  example: {
    questionnaire: 'twelve-months',
    edition: '1',
    answers: [{ question: 'would-choose-again', answer: 'yes' }],
  },
})
