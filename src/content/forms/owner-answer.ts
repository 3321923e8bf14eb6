import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What the owner answered, in the version that was shown. */
export const ownerAnswer = {
  kind: 'owner-answer',
  place: 'case',
  chapters: ['Year'],
  writtenBy: ['nurse', 'desk'],
  amendable: false,
  sections: [{ id: 'questions', fields: ['questionnaire', 'edition', 'answers'] }],
} as const satisfies FormArrangement
