import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A scan or radiograph as its report says it, LEFT beside RIGHT. */
export const imaging = {
  kind: 'imaging',
  place: 'case',
  chapters: ['Work-up'],
  writtenBy: ['surgeon', 'nurse'],
  amendable: true,
  sections: [
    { id: 'study', fields: ['modality', 'study', 'reportedBy'] },
    { id: 'ears', fields: ['LEFT', 'RIGHT'], pair: true },
    { id: 'words', fields: ['text'] },
  ],
  fields: {
    LEFT: { blank: 'not-assessed' },
    RIGHT: { blank: 'not-assessed' },
    'LEFT.massPlace': { shownWhen: { field: 'mass', is: ['yes'] }, otherwise: 'not-reported' },
    'LEFT.massSize': { shownWhen: { field: 'mass', is: ['yes'] }, otherwise: 'not-reported' },
    'RIGHT.massPlace': { shownWhen: { field: 'mass', is: ['yes'] }, otherwise: 'not-reported' },
    'RIGHT.massSize': { shownWhen: { field: 'mass', is: ['yes'] }, otherwise: 'not-reported' },
  },
} as const satisfies FormArrangement
