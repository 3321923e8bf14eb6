import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What is done against the skin disease behind the ear. */
export const skinPlan = {
  kind: 'skin-plan',
  place: 'case',
  chapters: ['Choice', 'Year'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [{ id: 'plan', fields: ['disease', 'measures', 'text', 'reviewOn'] }],
  fields: { measures: { blank: 'none' }, reviewOn: { blank: 'none' } },
} as const satisfies FormArrangement
