import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Written where the operated ears are offered, from what the person at the telephone chose; never typed. */
export const lateSign = {
  kind: 'late-sign',
  place: 'correction',
  chapters: [],
  writtenBy: ['desk', 'nurse', 'surgeon'],
  amendable: false,
  sections: [{ id: 'sign', fields: ['told', 'signs', 'belongs', 'chosen', 'offered', 'because'] }],
  fields: {
    told: { entries: ['referral', 'call'] },
    'chosen.event': { entries: ['late-event'] },
    'chosen.file': { register: 'case' },
    'offered.file': { register: 'case' },
  },
} as const satisfies FormArrangement
