import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What the owner answered; written on the page of the questions, by the owner or for them. */
export const ownerAnswer = {
  kind: 'owner-answer',
  place: 'correction',
  chapters: [],
  writtenBy: ['surgeon', 'nurse', 'desk'],
  amendable: false,
  sections: [
    {
      id: 'questions',
      fields: ['questionnaire', 'edition', 'occasion', 'ears', 'by', 'contact', 'language', 'finished', 'answers'],
    },
  ],
  fields: {
    occasion: { blank: 'optional' },
    'ears.operation': { register: 'operation' },
    contact: { register: 'contact', blank: 'optional' },
    language: { blank: 'optional' },
    'answers.side': { blank: 'none' },
    'answers.asked': { blank: 'optional' },
    'answers.said': { blank: 'none' },
  },
} as const satisfies FormArrangement
