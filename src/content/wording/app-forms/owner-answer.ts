import type { FormWords } from '#core/forms/words.ts'

export const ownerAnswer = {
  kind: 'owner-answer',
  purpose: 'What the owner answered, in the words that were shown.',
  sections: { questions: 'Questions and answers' },
  fields: {
    questionnaire: { label: 'Questions' },
    edition: { label: 'Edition' },
    occasion: { label: 'Asked when' },
    ears: { label: 'About', add: 'Add an ear', item: 'Ear {number}' },
    'ears.side': { label: 'Side' },
    'ears.operation': { label: 'Operation' },
    by: {
      label: 'Answered',
      options: {
        'owner-link': 'through the private link',
        phone: 'by phone',
        'in-person': 'here',
        'not-recorded': 'how is not recorded',
      },
    },
    contact: { label: 'By whom', none: 'not recorded' },
    language: { label: 'Language', wrong: 'Write the language as a tag, for example en or pt-BR.' },
    finished: { label: 'Sent', help: 'No: saved to go on later.' },
    answers: { label: 'Answers', add: 'Add an answer', item: 'Answer {number}' },
    'answers.question': { label: 'Question' },
    'answers.side': { label: 'Side', none: 'of the animal' },
    'answers.answer': { label: 'Answer' },
    'answers.asked': { label: 'As it was asked' },
    'answers.said': { label: 'As it was answered', none: 'in own words' },
  },
} as const satisfies FormWords
