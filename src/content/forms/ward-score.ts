import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One round in the ward. */
export const wardScore = {
  kind: 'ward-score',
  place: 'case',
  chapters: ['Ward'],
  writtenBy: ['nurse', 'anaesthetist', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'pain', fields: ['pain', 'notScoredBecause', 'action', 'given', 'rescoreAt'] },
    { id: 'eyes', fields: ['LEFT', 'RIGHT'], pair: true },
    { id: 'animal', fields: ['airway', 'throat', 'bandage', 'eats', 'urine'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: {
    pain: { blank: 'none' },
    'pain.scale': { control: 'select' },
    action: { blank: 'none' },
    given: { entries: ['drug-given'] },
    rescoreAt: { blank: 'none' },
  },
} as const satisfies FormArrangement
