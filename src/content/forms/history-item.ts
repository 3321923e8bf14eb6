import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One dated thing of the past. */
export const historyItem = {
  kind: 'history-item',
  place: 'case',
  chapters: ['Referral', 'Work-up'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'what', fields: ['topic', 'text'] },
    { id: 'when', fields: ['from', 'until'] },
    { id: 'source', fields: ['source'] },
  ],
} as const satisfies FormArrangement
