import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One page: red flags first, then how urgent and why in words. */
export const referral = {
  kind: 'referral',
  place: 'case',
  chapters: ['Referral'],
  writtenBy: ['desk', 'nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'caller', fields: ['caller', 'contact', 'reportedSide', 'complaint', 'daysOfSigns'] },
    { id: 'red-flags', fields: ['signs'] },
    { id: 'safety', fields: ['drugAllergy.answer', 'drugAllergy.what', 'mayFetchRecords'] },
    { id: 'urgency', fields: ['urgency', 'because'] },
  ],
  fields: {
    contact: { register: 'contact' },
    signs: { control: 'rows', rows: 'all' },
    'drugAllergy.what': { shownWhen: { field: 'answer', is: ['yes'] } },
    daysOfSigns: { blank: 'optional' },
  },
} as const satisfies FormArrangement
