import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A swelling, abscess or tract that came late. */
export const lateEvent = {
  kind: 'late-event',
  place: 'case',
  chapters: ['Year'],
  writtenBy: ['surgeon', 'nurse', 'desk'],
  amendable: true,
  sections: [
    { id: 'event', fields: ['what', 'operation', 'firstSeen', 'seenBy'] },
    { id: 'needed', fields: ['needed', 'text'] },
  ],
  fields: { operation: { register: 'operation' } },
} as const satisfies FormArrangement
