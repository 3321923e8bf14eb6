import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Estimate, limits and consent. */
export const agreement = {
  kind: 'agreement',
  place: 'case',
  chapters: ['Agreement'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [
    { id: 'plan', fields: ['plan.ears', 'plan.surgeon', 'plan.leaflet', 'plan.language'] },
    { id: 'costs', fields: ['estimate.low', 'estimate.high', 'plan.ceiling'] },
    { id: 'limits', fields: ['resuscitate', 'mayExtend', 'photographs'] },
    { id: 'taught', fields: ['teachBack', 'explainedBy'] },
    { id: 'consent', fields: ['consentBy', 'authority'] },
  ],
  fields: {
    fingerprint: { control: 'plan-fingerprint' },
    'plan.surgeon': { register: 'person' },
    explainedBy: { register: 'person' },
    consentBy: { register: 'contact' },
    teachBack: { control: 'rows', rows: 'some' },
  },
} as const satisfies FormArrangement
