import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A near miss or an incident; in theatre it is written on a screen of its own. */
export const incidentNote = {
  kind: 'incident-note',
  place: 'case',
  chapters: ['Theatre', 'Ward', 'Home'],
  writtenBy: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  amendable: true,
  sections: [
    { id: 'happened', fields: ['what', 'during', 'reached', 'text'] },
    { id: 'learnt', fields: ['helped', 'change'] },
    { id: 'belongs', fields: ['emergency', 'point', 'pointOf'] },
  ],
  fields: {
    during: { blank: 'optional' },
    reached: { blank: 'optional' },
    text: { blank: 'optional' },
    helped: { blank: 'optional' },
    change: { blank: 'optional' },
    emergency: { blank: 'optional', entries: ['theatre-stamp'] },
    point: { blank: 'optional' },
    pointOf: { blank: 'optional' },
  },
} as const satisfies FormArrangement
