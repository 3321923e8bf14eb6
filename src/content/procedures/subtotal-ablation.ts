import { procedure } from '#core/procedures/procedure.ts'
import { readStudy } from '../follow-up/provenance.ts'
import { wholeYear } from '../follow-up/visits.ts'

/** The deep canal is taken out and the bulla cleared; the outer part stays, so that an erect ear keeps its carriage. */
export const subtotalAblation = procedure({
  id: 'subtotal-ablation',
  name: 'Subtotal ear canal ablation',
  species: ['dog', 'cat'],
  indications: [
    {
      value: 'An animal with erect ears and disease confined to the deep canal: ear carriage is kept.',
      sources: ['mathews-2006'],
      where: '18 dogs, one cat',
      ...readStudy,
    },
  ],
  against: [
    { value: 'Skin disease of the part that stays can go on: 8 of 19.', sources: ['mathews-2006'], ...readStudy },
  ],
  checkpoints: [
    {
      id: 's9-counts',
      title: 'Counts and throat pack',
      mind: 'counts agree; throat pack out; specimens labelled',
      details: [
        {
          id: 'counts',
          asks: 'Counts',
          kind: 'coded',
          answers: { agree: 'Swabs and instruments agreed.', differ: 'Swabs or instruments did not agree.' },
        },
      ],
      done: 'The counts were made.',
      notDone: 'The counts were not made: {because}.',
      because: [],
    },
  ],
  checkpointsComplete: {
    kind: 'unknown',
    because: 'The references give reasons and results of this operation, not its steps.',
  },
  risks: [
    { outcome: 'facial_nerve_deficit_any', shows: 'first-days' },
    { outcome: 'deep_recurrence', shows: 'late' },
    { outcome: 'pinna_or_canal_dermatitis', shows: 'late' },
    { outcome: 'ear_carriage_normal', shows: 'late' },
  ],
  consentItems: [
    'which-ear',
    'what-is-removed',
    'alternatives-offered',
    'no-treatment-offered',
    'risks-with-numbers',
    'skin-disease-goes-on',
    'hearing',
    'face-and-eye',
    'late-tract',
    'who-operates',
    'may-extend',
    'resuscitation',
    'ceiling-of-costs',
    'tissue-to-laboratory',
    'photographs',
  ],
  followUp: {
    steps: wholeYear,
    faceLooks: {
      kind: 'unknown',
      because:
        'No reference says when face and eye are looked at after this operation; a finding still makes its own dates.',
    },
    plans: ['skin', 'other-ear'],
  },
})
