import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A dose this house starts from when nobody chose one. */
export const dosePolicy = {
  kind: 'dose-policy',
  place: 'clinic',
  chapters: [],
  writtenBy: ['surgeon', 'anaesthetist', 'manager'],
  amendable: true,
  sections: [
    { id: 'for', fields: ['drug', 'species', 'use', 'route', 'qualifier'] },
    { id: 'dose', fields: ['dose', 'because'] },
  ],
  fields: { drug: { register: 'drug' }, use: { control: 'select' }, route: { control: 'select' } },
} as const satisfies FormArrangement
