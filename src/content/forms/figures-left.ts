import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Written from the page of our results, where the change was looked at; never typed. */
export const figuresLeft = {
  kind: 'figures-left',
  place: 'clinic',
  chapters: [],
  writtenBy: ['surgeon'],
  amendable: false,
  sections: [{ id: 'figures', fields: ['species', 'procedure', 'asOf', 'because', 'figures'] }],
} as const satisfies FormArrangement
