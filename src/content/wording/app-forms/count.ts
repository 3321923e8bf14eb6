import type { FormWords } from '#core/forms/words.ts'
import { reportInEnglish } from '../report.ts'

export const count = {
  kind: 'count',
  purpose: 'Swabs, needles and instruments counted, and where the throat pack is.',
  sections: { count: 'Count' },
  fields: {
    when: { label: 'When', options: { before: 'before', 'before-closing': 'before closing', final: 'final' } },
    items: { label: 'Counted', add: 'Add a line', item: 'Line {number}' },
    'items.what': { label: 'What' },
    'items.expected': { label: 'Should be' },
    'items.found': { label: 'Found' },
    throatPack: { label: reportInEnglish.terms.throatPack, options: reportInEnglish.throatPack },
  },
} as const satisfies FormWords
