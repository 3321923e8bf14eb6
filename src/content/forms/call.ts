import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A try to speak with somebody. */
export const call = {
  kind: 'call',
  place: 'case',
  chapters: ['Referral', 'Work-up', 'Agreement', 'Ward', 'Home', 'Year'],
  writtenBy: ['nurse', 'desk', 'surgeon'],
  amendable: true,
  sections: [{ id: 'call', fields: ['contact', 'direction', 'channel', 'about', 'reached', 'text'] }],
  fields: { contact: { register: 'contact' } },
} as const satisfies FormArrangement
