import type { FormWords } from '#core/forms/words.ts'

export const ownerAnswer = {
  kind: 'owner-answer',
  purpose: 'What the owner answered, in the version of the questions that was shown.',
  sections: { questions: 'Questions and answers' },
  fields: {
    questionnaire: { label: 'Questionnaire' },
    edition: { label: 'Edition' },
    answers: { label: 'Answers', add: 'Add an answer', item: 'Answer {number}' },
    'answers.question': { label: 'Question' },
    'answers.answer': { label: 'Answer, in the owner’s words' },
  },
} as const satisfies FormWords
