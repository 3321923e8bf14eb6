import type { FormWords } from '#core/forms/words.ts'

export const skinPlan = {
  kind: 'skin-plan',
  purpose: 'Surgery takes the canal away, not the allergy. What is done against the skin disease, and by whom.',
  sections: { plan: 'Plan for the skin' },
  fields: {
    disease: {
      label: 'Disease behind the ear',
      options: {
        'food-allergy': 'food allergy',
        atopy: 'atopy',
        hormones: 'hormones',
        parasites: 'parasites',
        other: 'another',
        'none-found': 'looked for, none found',
        'not-known-yet': 'not known yet',
      },
    },
    measures: { label: 'What is done', none: 'nothing is done', add: 'Add a measure', item: 'Measure {number}' },
    'measures.what': { label: 'What' },
    'measures.by': {
      label: 'By whom',
      options: { us: 'us', 'referring-vet': 'referring vet', dermatologist: 'dermatologist', owner: 'owner' },
    },
    text: { label: 'In words', help: 'Name of the disease, what was tried, what must not be stopped.' },
    reviewOn: { label: 'Looked at again on', help: 'For example 1 June 2026.', none: 'no day is set' },
  },
} as const satisfies FormWords
