import type { FormWords } from '#core/forms/words.ts'
import { findingWords } from '../letter.ts'

export const choice = {
  kind: 'choice',
  purpose: 'What was offered for this ear, what was chosen or declined and why, and what is still missing.',
  sections: { weighing: 'For, against, missing', options: 'Options talked over', session: 'Session' },
  fields: {
    for: { label: 'Speaks for an operation', help: 'One reason on each line.' },
    against: { label: 'Speaks against, or must be known first', help: 'One reason on each line.' },
    missing: { label: 'Still missing for a decision', help: 'One on each line. Empty means that nothing is missing.' },
    options: {
      label: 'Options talked over',
      help: 'No treatment belongs among them.',
      add: 'Add an option',
      item: 'Option {number}',
    },
    'options.option': { label: 'Option', options: findingWords.options },
    'options.answer': { label: 'Answer', options: findingWords.answers },
    'options.because': { label: 'Because' },
    session: {
      label: 'Session',
      options: {
        'one-ear': 'one ear only',
        'both-in-one-session': 'both ears in one session',
        staged: 'both ears, one after the other',
        'not-decided': 'not decided',
      },
    },
  },
} as const satisfies FormWords
