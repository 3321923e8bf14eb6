import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A paper that belongs to the animal or ear. */
export const paper = {
  kind: 'paper',
  place: 'case',
  chapters: ['Referral', 'Work-up', 'Choice', 'Agreement', 'Theatre', 'Ward', 'Home', 'Year'],
  writtenBy: ['desk', 'nurse', 'surgeon'],
  amendable: true,
  sections: [{ id: 'paper', fields: ['what', 'title', 'dated', 'from', 'sideOnPaper'] }],
} as const satisfies FormArrangement
