import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Wound, face, eye and balance of an operated ear at one look. */
export const check = {
  kind: 'check',
  place: 'case',
  chapters: ['Ward', 'Home', 'Year'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'look', fields: ['seenBy'] },
    { id: 'wound', fields: ['wound', 'woundNeeded', 'sutures', 'painful'] },
    { id: 'face', fields: ['blink', 'lipOrEarDroop', 'possibleBlockEffect', 'nostril', 'horner'] },
    { id: 'eye', fields: ['tearTest', 'fluorescein'] },
    {
      id: 'balance',
      fields: ['headTilt', 'nystagmus', 'unsteady'],
      normal: { headTilt: 'no', nystagmus: 'no', unsteady: 'no' },
    },
    { id: 'throat', fields: ['gag', 'hears'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: { tearTest: { blank: 'not-assessed' } },
} as const satisfies FormArrangement
