import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Ends everything owed by or to the owner. */
export const death = {
  kind: 'death',
  place: 'case',
  chapters: ['Ward', 'Home', 'Year'],
  writtenBy: ['surgeon', 'nurse', 'desk'],
  amendable: true,
  sections: [{ id: 'death', fields: ['how', 'cause', 'relatedToEar', 'relatedToOperation', 'heardFrom'] }],
} as const satisfies FormArrangement
