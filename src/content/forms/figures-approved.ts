import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Written from the page of our results, where the figures are counted; never typed. */
export const figuresApproved = {
  kind: 'figures-approved',
  place: 'clinic',
  chapters: [],
  writtenBy: ['surgeon'],
  amendable: false,
  sections: [{ id: 'figures', fields: ['species', 'procedure', 'asOf', 'figures', 'text'] }],
} as const satisfies FormArrangement
