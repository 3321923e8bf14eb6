import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What an owner wrote from home; comes through the private link, or is written down for somebody who told it. */
export const ownerNote = {
  kind: 'owner-note',
  place: 'case',
  chapters: ['Home', 'Year'],
  writtenBy: ['nurse', 'desk'],
  amendable: false,
  sections: [
    { id: 'note', fields: ['text', 'seen', 'ear'] },
    { id: 'asked', fields: ['language', 'keptSince'] },
  ],
} as const satisfies FormArrangement
