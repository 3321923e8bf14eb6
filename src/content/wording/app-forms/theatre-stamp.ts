import type { FormWords } from '#core/forms/words.ts'

export const theatreStamp = {
  kind: 'theatre-stamp',
  purpose: 'A checkpoint of the operation: done, or not done with the reason.',
  sections: { stamp: 'Checkpoint' },
  fields: {
    checkpoint: { label: 'Which point?' },
    answer: { label: 'Done?', options: { done: 'done', 'not-done': 'not done' } },
    detail: { label: 'How it was' },
    text: { label: 'In words', help: 'When it was not done: the reason.' },
  },
} as const satisfies FormWords
