import { procedure } from '#core/procedures/procedure.ts'
import { readNotes, readSecondHand, readStudy } from '../follow-up/provenance.ts'
import { wholeYear } from '../follow-up/visits.ts'

/** The outer wall of the vertical canal is taken away; the horizontal canal opens to the side. */
export const lateralWallResection = procedure({
  id: 'lateral-wall-resection',
  name: 'Lateral wall resection',
  species: ['dog', 'cat'],
  indications: [
    {
      value:
        'Open horizontal canal, little overgrowth, no middle ear disease, and an owner who goes on treating the cause.',
      sources: ['brockman-2008-wsava', 'bsava-head-neck-thoracic'],
      where: 'manual page 76',
      ...readNotes,
    },
    {
      value: 'A small mass of the outer wall of the vertical canal.',
      sources: ['small-canal-masses-2016'],
      ...readStudy,
    },
  ],
  against: [
    {
      value: 'Narrow or blocked horizontal canal, marked overgrowth, uncontrolled skin or hormone disease.',
      sources: ['brockman-2008-wsava'],
      ...readNotes,
    },
    {
      value: 'Cocker Spaniels: usually unsuccessful even when done early.',
      sources: ['bsava-head-neck-thoracic', 'sylvestre-1998'],
      where: 'manual page 76',
      ...readSecondHand,
    },
    { value: 'It failed in five of the eight dogs that were followed.', sources: ['doyle-2004'], ...readStudy },
  ],
  checkpoints: [
    {
      id: 'l9-counts',
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
    { outcome: 'wound_infection_or_dehiscence', shows: 'first-weeks' },
    { outcome: 'resolution_or_improved', shows: 'late' },
    { outcome: 'tumour_local_recurrence', shows: 'late' },
  ],
  consentItems: [
    'which-ear',
    'what-is-removed',
    'alternatives-offered',
    'no-treatment-offered',
    'risks-with-numbers',
    'skin-disease-goes-on',
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
