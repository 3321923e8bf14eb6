import type { FormWords } from '#core/forms/words.ts'

export const estimate = {
  kind: 'estimate',
  purpose: 'What it may cost, from low to high, and who accepted it. A change is a new version, answered anew.',
  sections: { estimate: 'The estimate', lines: 'Lines', limits: 'Deposit and limit', answer: 'Answer' },
  fields: {
    edition: { label: 'Version', help: '1 for the first; one more for each that replaces it.' },
    validUntil: { label: 'Valid until', help: 'For example 1 May 2026.' },
    givenBy: { label: 'Given by' },
    lines: { label: 'Lines', add: 'Add a line', item: 'Line {number}' },
    'lines.part': {
      label: 'Part',
      options: {
        'work-up': 'work-up',
        theatre: 'theatre',
        laboratory: 'laboratory',
        ward: 'days in the ward',
        rechecks: 'rechecks to twelve months',
        'second-ear': 'second ear',
        complications: 'reserve for complications',
        'operation-again': 'operation again',
        other: 'something else',
      },
    },
    'lines.what': { label: 'What', help: 'Histology and culture are forgotten most.' },
    'lines.low': { label: 'At least' },
    'lines.high': { label: 'At most' },
    deposit: { label: 'Deposit asked', none: 'no deposit' },
    paid: { label: 'Has it been paid?', none: 'nothing paid yet', open: 'paid' },
    'paid.amount': { label: 'How much' },
    'paid.on': { label: 'When' },
    ceiling: {
      label: 'Never more than this without the owner’s word',
      help: 'It should not lie under the sum of what is expected at least.',
    },
    answer: { label: 'Has the owner answered?', none: 'not answered yet', open: 'answered' },
    'answer.said': { label: 'Answer', options: { accepted: 'accepted', declined: 'declined' } },
    'answer.by': { label: 'By' },
    'answer.on': { label: 'When' },
  },
} as const satisfies FormWords
