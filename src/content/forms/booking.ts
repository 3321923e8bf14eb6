import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Opens an operation: which ear, what, when, under which agreement. */
export const booking = {
  kind: 'booking',
  place: 'case',
  chapters: ['Agreement'],
  writtenBy: ['desk', 'nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'operation', fields: ['side', 'procedure', 'plannedFor'] },
    { id: 'people', fields: ['surgeon', 'anaesthetist'] },
    { id: 'agreement', fields: ['agreement'] },
  ],
  fields: {
    surgeon: { register: 'person' },
    anaesthetist: { register: 'person' },
    agreement: { entries: ['agreement'] },
  },
} as const satisfies FormArrangement
