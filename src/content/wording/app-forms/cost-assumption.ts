import type { FormWords } from '#core/forms/words.ts'
import { findingWords } from '../letter.ts'

export const costAssumption = {
  kind: 'cost-assumption',
  purpose: 'What a year of this option was reckoned from, at our own prices.',
  sections: { cost: 'What a year could cost' },
  fields: {
    option: {
      label: 'Option',
      options: {
        ...findingWords.options,
        'both-in-one-session': 'both ears in one session',
        staged: 'both ears, one after the other',
      },
    },
    lines: { label: 'Lines', add: 'Add a line', item: 'Line {number}' },
    'lines.what': { label: 'What' },
    'lines.atLeast': { label: 'Times, at least' },
    'lines.atMost': { label: 'Times, at most' },
    'lines.every': { label: 'How often', options: { year: 'in the year', month: 'each month' } },
    'lines.price': { label: 'Price', none: 'no price is kept', open: 'at our price' },
    'lines.price.row': { label: 'Row of the price list' },
    'lines.price.low': { label: 'At least' },
    'lines.price.high': { label: 'At most' },
  },
} as const satisfies FormWords
