import type { FormWords } from '#core/forms/words.ts'

export const resultRead = {
  kind: 'result-read',
  purpose: 'You have read a result and decide. Until this exists the result is owed.',
  sections: { decision: 'Decision' },
  fields: {
    result: { label: 'Which result?' },
    decision: {
      label: 'What follows?',
      options: {
        'no-change': 'go on as before',
        change: 'change the treatment',
        stop: 'stop the treatment',
        'sample-again': 'take another sample',
        'decide-later': 'read; the decision waits',
      },
    },
    edition: { label: 'Judged by breakpoints of' },
    text: { label: 'In words', help: 'What you read and why you decide so.' },
  },
} as const satisfies FormWords
