import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Consent taken back for one ear. */
export const consentWithdrawn = {
  kind: 'consent-withdrawn',
  place: 'case',
  chapters: ['Agreement', 'Theatre'],
  writtenBy: ['surgeon', 'nurse', 'desk', 'anaesthetist'],
  amendable: true,
  sections: [{ id: 'withdrawn', fields: ['by', 'how', 'why', 'takenBy'] }],
  fields: { by: { register: 'contact' }, takenBy: { register: 'person' } },
} as const satisfies FormArrangement
