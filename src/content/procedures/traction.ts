import { procedure } from '#core/procedures/procedure.ts'
import { commonPractice, readStudy } from '../follow-up/provenance.ts'
import { firstCall, recheckMonth3, recheckMonth6, twelveMonthStatus } from '../follow-up/visits.ts'

/** A polyp pulled out with its root, through the mouth or the canal. */
export const traction = procedure({
  id: 'traction',
  name: 'Polyp traction',
  species: ['cat'],
  indications: [
    {
      value: 'A polyp that can be reached through the canal or the throat.',
      sources: ['greci-2014', 'anderson-2000'],
      ...readStudy,
    },
  ],
  against: [{ value: 'A polyp that has grown again, or a bulla full of more than polyp.', ...commonPractice }],
  checkpoints: [
    {
      id: 't1-polyp',
      title: 'Polyp',
      mind: 'with its stalk',
      details: [
        {
          id: 'stalk',
          asks: 'Stalk',
          kind: 'coded',
          answers: { whole: 'The polyp came out with its stalk.', torn: 'The polyp tore; the stalk may have stayed.' },
        },
      ],
      done: 'The polyp was pulled out.',
      notDone: 'The polyp was not pulled out: {because}.',
      because: [
        {
          value: 'Regrowth 14.3 % in experienced hands, 35 % in less experienced ones.',
          sources: ['janssens-2017'],
          ...readStudy,
        },
      ],
    },
    {
      id: 't2-histology',
      title: 'Histology',
      mind: 'the polyp goes to the laboratory',
      details: [],
      done: 'The polyp was sent for histology.',
      notDone: 'The polyp was not sent for histology: {because}.',
      because: [{ value: 'Not every mass of a cat’s ear is a polyp.', sources: ['bacon-2003'], ...readStudy }],
    },
  ],
  checkpointsComplete: {
    kind: 'unknown',
    because: 'The references count results of traction and do not describe its steps.',
  },
  risks: [
    { outcome: 'horner_any', shows: 'first-days' },
    { outcome: 'disease_recurrence_local', shows: 'late' },
  ],
  consentItems: [
    'which-ear',
    'alternatives-offered',
    'no-treatment-offered',
    'risks-with-numbers',
    'regrowth',
    'who-operates',
    'resuscitation',
    'ceiling-of-costs',
    'tissue-to-laboratory',
  ],
  followUp: {
    steps: [firstCall, recheckMonth3, recheckMonth6, twelveMonthStatus],
    faceLooks: {
      kind: 'unknown',
      because: 'No reference says when face and eye are looked at after traction; a finding still makes its own dates.',
    },
    plans: [],
  },
})
