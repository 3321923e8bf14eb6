import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Takes a wrong entry back. */
export const withdrawal = {
  kind: 'withdrawal',
  place: 'correction',
  chapters: [],
  writtenBy: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  amendable: false,
  sections: [{ id: 'why', fields: ['because'] }],
} as const satisfies FormArrangement
