import { procedure } from '#core/procedures/procedure.ts'
import { readNotes, readSecondHand } from '../follow-up/provenance.ts'
import { wholeYear } from '../follow-up/visits.ts'

/** The vertical canal is taken out; the horizontal canal gets a new opening. */
export const verticalCanalAblation = procedure({
  id: 'vertical-canal-ablation',
  name: 'Vertical canal ablation',
  species: ['dog', 'cat'],
  indications: [
    {
      value: 'The vertical canal is badly diseased or carries a mass; the horizontal canal is open.',
      sources: ['bsava-head-neck-thoracic'],
      where: 'manual page 77',
      ...readSecondHand,
    },
  ],
  against: [
    {
      value: 'The horizontal canal often cannot be judged before surgery: agree on full removal as the fallback.',
      sources: ['bsava-head-neck-thoracic'],
      where: 'manual page 77',
      ...readSecondHand,
    },
    { value: 'Disease that reaches the horizontal canal or the bulla.', sources: ['house-2015-wsava'], ...readNotes },
  ],
  checkpoints: [
    {
      id: 'v9-counts',
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
    { outcome: 'facial_nerve_deficit_any', shows: 'first-days' },
    { outcome: 'resolution_or_improved', shows: 'late' },
  ],
  consentItems: [
    'which-ear',
    'what-is-removed',
    'alternatives-offered',
    'no-treatment-offered',
    'risks-with-numbers',
    'skin-disease-goes-on',
    'fallback-to-full-removal',
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
