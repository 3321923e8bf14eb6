import type { FormWords } from '#core/forms/words.ts'
import { lateSignNames } from '../app-late.ts'

export const lateSign = {
  kind: 'late-sign',
  purpose: 'To which operated ear a late sign belongs that was told in this file.',
  sections: { sign: 'The sign' },
  fields: {
    told: { label: 'Told in' },
    signs: { label: 'What was told', options: lateSignNames },
    belongs: {
      label: 'Belongs to',
      options: {
        'operated-ear': 'an ear that was operated here',
        none: 'none of the ears that were operated here',
        unsure: 'not sure',
        'not-looked': 'nobody could look: the server was away',
      },
    },
    chosen: { label: 'The ear', none: 'none', open: 'Name the ear' },
    'chosen.file': { label: 'In the file', wrong: 'Name a case, for example case:0042.' },
    'chosen.operation': { label: 'After the operation' },
    'chosen.side': { label: 'Side', options: { LEFT: 'LEFT', RIGHT: 'RIGHT' } },
    'chosen.event': { label: 'The late event there' },
    offered: { label: 'Offered', add: 'Add an ear', item: 'Ear {number}' },
    'offered.file': { label: 'In the file', wrong: 'Name a case, for example case:0042.' },
    'offered.operation': { label: 'After the operation' },
    'offered.side': { label: 'Side', options: { LEFT: 'LEFT', RIGHT: 'RIGHT' } },
    'offered.operated': { label: 'Operated on' },
    'offered.words': { label: 'Why, and what stands against it' },
    because: { label: 'In words', none: 'nothing to add' },
  },
} as const satisfies FormWords
