import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Estimate, limits and consent. */
export const agreement = {
  kind: 'agreement',
  place: 'case',
  chapters: ['Agreement'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [
    { id: 'plan', fields: ['plan.ears', 'plan.surgeon', 'plan.leaflet', 'plan.language', 'plan.numbers'] },
    { id: 'costs', fields: ['estimate.low', 'estimate.high', 'estimate.entry', 'plan.ceiling'] },
    { id: 'limits', fields: ['resuscitate', 'plan.mayExtend', 'plan.extension', 'photographs'] },
    { id: 'taught', fields: ['teachBack', 'explainedBy'] },
    {
      id: 'consent',
      fields: ['consentBy', 'authority', 'authorised', 'soundMind', 'given', 'witness', 'signature', 'copy'],
    },
  ],
  fields: {
    fingerprint: { control: 'plan-fingerprint' },
    'plan.surgeon': { register: 'person' },
    'plan.numbers.procedure': { control: 'select' },
    'plan.numbers.outcome': { control: 'select' },
    'estimate.entry': { entries: ['estimate'] },
    explainedBy: { register: 'person' },
    consentBy: { register: 'contact' },
    authorised: { blank: 'none' },
    'authorised.by': { register: 'contact' },
    'authorised.when': { now: true },
    'authorised.witness': { register: 'person' },
    witness: { register: 'person' },
    signature: { control: 'carried', blank: 'optional' },
    authority: { control: 'select' },
  },
} as const satisfies FormArrangement
