import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What becomes of the ear that is not operated. */
export const otherEarPlan = {
  kind: 'other-ear-plan',
  place: 'case',
  chapters: ['Choice', 'Year'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [{ id: 'plan', fields: ['plan', 'because', 'reviewOn'] }],
  fields: { reviewOn: { blank: 'none' } },
} as const satisfies FormArrangement
