import { procedure } from '#core/procedures/procedure.ts'
import { throatPackOut } from '../follow-up/points.ts'
import { commonPractice, readStudy, standardAnatomy } from '../follow-up/provenance.ts'
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
      id: 't0-route',
      title: 'Way in',
      mind: 'through the canal, through the mouth, or both; the soft palate is looked behind',
      details: [
        {
          id: 'route',
          asks: 'Way in',
          kind: 'coded',
          answers: {
            canal: 'The polyp was reached through the canal.',
            mouth: 'The polyp was reached through the mouth.',
            both: 'The polyp was reached through canal and mouth.',
          },
        },
      ],
      done: 'The polyp was reached.',
      notDone: 'The polyp was not reached: {because}.',
      because: [
        { value: 'A polyp of the middle ear grows into the canal, into the throat, or both.', ...standardAnatomy },
      ],
    },
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
    {
      id: 't3-bleeding',
      title: 'Bleeding',
      mind: 'press and wait; look into the throat before the tube comes out',
      details: [],
      done: 'Bleeding was controlled and the throat was looked into.',
      notDone: 'The throat was not looked into: {because}.',
      because: [{ value: 'Blood in the throat of a cat that wakes closes the airway.', ...commonPractice }],
    },
    {
      id: 't9-counts',
      title: 'Counts and throat pack',
      mind: 'counts agree; throat pack out; specimens labelled',
      details: [throatPackOut],
      done: 'The counts were made.',
      notDone: 'The counts were not made: {because}.',
      because: [{ value: 'A forgotten pack closes the airway.', ...commonPractice }],
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
