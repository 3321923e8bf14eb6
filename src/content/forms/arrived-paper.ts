import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A paper or picture that came in; written in the holding tray. */
export const arrivedPaper = {
  kind: 'arrived-paper',
  place: 'clinic',
  chapters: [],
  writtenBy: ['desk', 'nurse', 'surgeon'],
  amendable: true,
  sections: [{ id: 'arrival', fields: ['came', 'from', 'seems', 'says'] }],
} as const satisfies FormArrangement
