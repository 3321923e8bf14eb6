import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A picture or a paper. */
export const photograph = {
  kind: 'photograph',
  place: 'case',
  chapters: ['Referral', 'Work-up', 'Choice', 'Agreement', 'Theatre', 'Ward', 'Home', 'Year'],
  writtenBy: ['nurse', 'surgeon', 'desk'],
  amendable: true,
  sections: [{ id: 'picture', fields: ['shows', 'sideInPicture', 'takenBy'] }],
} as const satisfies FormArrangement
