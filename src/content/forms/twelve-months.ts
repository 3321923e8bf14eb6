import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Where the operated ear stands after a year. */
export const twelveMonths = {
  kind: 'twelve-months',
  place: 'case',
  chapters: ['Year'],
  writtenBy: ['surgeon', 'nurse'],
  amendable: true,
  sections: [
    { id: 'source', fields: ['source', 'tries'] },
    { id: 'result', fields: ['status', 'face', 'wouldChooseAgain', 'text'] },
  ],
} as const satisfies FormArrangement
