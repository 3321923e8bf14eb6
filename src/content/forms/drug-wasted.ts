import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What was drawn and not given, before a witness. */
export const drugWasted = {
  kind: 'drug-wasted',
  place: 'case',
  chapters: ['Theatre', 'Ward'],
  writtenBy: ['anaesthetist', 'nurse'],
  amendable: true,
  sections: [{ id: 'waste', fields: ['drug', 'amount', 'ampoule', 'because', 'witness'] }],
  fields: { drug: { register: 'drug', free: true }, witness: { register: 'person', blank: 'none' } },
} as const satisfies FormArrangement
