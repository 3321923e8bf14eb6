import type { FormArrangement } from '#core/forms/arrangement.ts'

/** The blood group, in the system of the species. */
export const bloodType = {
  kind: 'blood-type',
  place: 'case',
  chapters: ['Work-up'],
  writtenBy: ['nurse', 'anaesthetist', 'surgeon'],
  amendable: true,
  sections: [{ id: 'type', fields: ['system', 'dea1', 'ab', 'method', 'text'] }],
  fields: {
    dea1: { shownWhen: { field: 'system', is: ['dea-1'] }, otherwise: 'not-typed' },
    ab: { shownWhen: { field: 'system', is: ['ab'] }, otherwise: 'unknown' },
  },
} as const satisfies FormArrangement
