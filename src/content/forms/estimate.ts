import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What it may cost, and whether somebody accepted it. */
export const estimate = {
  kind: 'estimate',
  place: 'case',
  chapters: ['Agreement'],
  writtenBy: ['desk', 'surgeon', 'nurse'],
  amendable: true,
  sections: [
    { id: 'estimate', fields: ['edition', 'validUntil', 'givenBy'] },
    { id: 'lines', fields: ['lines'] },
    { id: 'limits', fields: ['deposit', 'paid', 'ceiling'], running: 'estimate' },
    { id: 'answer', fields: ['answer'] },
  ],
  fields: {
    givenBy: { register: 'person' },
    answer: { blank: 'none' },
    'answer.by': { register: 'contact' },
    'answer.on': { now: true },
    deposit: { blank: 'none' },
    paid: { blank: 'none' },
    'paid.on': { now: true },
    'lines.part': { control: 'select' },
  },
} as const satisfies FormArrangement
