import type { FormWords } from '#core/forms/words.ts'
import { findingWords } from '../letter.ts'

export const ownerWishes = {
  kind: 'owner-wishes',
  purpose: 'What matters to the owner, which way they lean, and what they want to ask.',
  sections: { wishes: 'What matters', asked: 'How it was asked' },
  fields: {
    leaning: {
      label: 'Leans to',
      none: 'not said',
      options: { 'not-decided': 'not decided yet', ...findingWords.options },
    },
    matters: { label: 'What matters', add: 'Add something that matters', item: 'What matters, {number}' },
    'matters.matter': {
      label: 'This matters',
      options: {
        'no-pain': 'for the animal: no more pain',
        'short-recovery': 'for the animal: over it soon',
        'no-operation': 'for the animal: no operation',
        hearing: 'for the animal: goes on hearing',
        face: 'for the animal: face and eye as they are',
        'care-at-home': 'at home: care that can be done',
        visits: 'at home: few visits and stays',
        cost: 'at home: a cost that can be paid',
        once: 'at home: done once and for all',
      },
    },
    'matters.weight': {
      label: 'How much',
      options: { very: 'matters a lot', some: 'matters some', little: 'matters little' },
    },
    questions: { label: 'Questions of the owner' },
    edition: { label: 'Edition of what was read' },
    language: {
      label: 'Language',
      help: 'As a tag, for example en.',
      wrong: 'Write the language as a tag, for example en or pt-BR.',
    },
  },
} as const satisfies FormWords
