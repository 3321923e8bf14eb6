import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Wound, face and eye of an operated ear at one look. */
export const check = {
  kind: 'check',
  place: 'case',
  chapters: ['Ward', 'Home', 'Year'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'look', fields: ['seenBy'] },
    { id: 'wound', fields: ['wound', 'woundNeeded', 'sutures', 'painful'] },
    { id: 'face', fields: ['blink', 'lipOrEarDroop', 'possibleBlockEffect', 'horner', 'headTilt'] },
    { id: 'eye', fields: ['tearTest', 'fluorescein'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: { tearTest: { blank: 'not-assessed' } },
} as const satisfies FormArrangement
