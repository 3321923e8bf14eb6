import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What the referring practice answered; mostly sent on its short form, or told on the telephone. */
export const vetAnswer = {
  kind: 'vet-answer',
  place: 'case',
  chapters: ['Year'],
  writtenBy: ['nurse', 'surgeon', 'desk'],
  amendable: false,
  sections: [{ id: 'answer', fields: ['examinedBy', 'asked', 'looks', 'saysDied', 'text'] }],
  fields: { looks: { entries: ['check'] } },
} as const satisfies FormArrangement
