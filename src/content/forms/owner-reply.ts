import type { FormArrangement } from '#core/forms/arrangement.ts'

/** The answer to a note of an owner. */
export const ownerReply = {
  kind: 'owner-reply',
  place: 'case',
  chapters: ['Home', 'Year'],
  writtenBy: ['surgeon', 'nurse', 'desk'],
  amendable: true,
  sections: [{ id: 'answer', fields: ['note', 'text'] }],
  fields: { note: { entries: ['owner-note'] } },
} as const satisfies FormArrangement
