import type { FormWords } from '#core/forms/words.ts'
import { procedureWords } from '../app-form-words.ts'
import { countUnitNames, ownOutcomeNames } from '../own-figures.ts'

export const figuresApproved = {
  kind: 'figures-approved',
  purpose: 'Our own counted results of one operation, approved to be said to the next owner.',
  sections: { figures: 'Figures' },
  fields: {
    species: { label: 'Species', options: { dog: 'dog', cat: 'cat' } },
    procedure: { label: 'Operation', options: procedureWords },
    asOf: { label: 'Counted on' },
    figures: { label: 'Figures', add: 'Add a figure', item: 'Figure {number}' },
    'figures.outcome': { label: 'Outcome', options: ownOutcomeNames },
    'figures.unit': { label: 'Counted per', options: countUnitNames },
    'figures.events': { label: 'Had it' },
    'figures.total': { label: 'Known' },
    'figures.lost': { label: 'Not known' },
    'figures.from': { label: 'Operated from', none: 'nobody was due' },
    'figures.until': { label: 'Operated until', none: 'nobody was due' },
    text: { label: 'In words', none: 'nothing to add' },
  },
} as const satisfies FormWords
