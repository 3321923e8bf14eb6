import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Words that belong nowhere else. */
export const note = {
  kind: 'note',
  place: 'case',
  chapters: ['Referral', 'Work-up', 'Choice', 'Agreement', 'Theatre', 'Ward', 'Home', 'Year'],
  writtenBy: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  amendable: true,
  sections: [{ id: 'note', fields: ['text'] }],
  fields: { text: { control: 'long-text' } },
} as const satisfies FormArrangement
