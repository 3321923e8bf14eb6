import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Face, eye and balance before any sedative, LEFT beside RIGHT. */
export const baseline = {
  kind: 'baseline',
  place: 'case',
  chapters: ['Work-up'],
  writtenBy: ['surgeon', 'nurse'],
  amendable: true,
  sections: [
    { id: 'before', fields: ['beforeSedation', 'drugsOnBoard'] },
    { id: 'face', fields: ['LEFT', 'RIGHT'], pair: true },
    { id: 'balance', fields: ['headTilt', 'nystagmus', 'unsteady', 'gag', 'hears'] },
  ],
  fields: {
    drugsOnBoard: { blank: 'none' },
    'LEFT.tearTest': { blank: 'not-assessed' },
    'RIGHT.tearTest': { blank: 'not-assessed' },
  },
} as const satisfies FormArrangement
