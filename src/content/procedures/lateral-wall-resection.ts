import { procedure } from '#core/procedures/procedure.ts'
import { countsMade, openingSeen } from '../follow-up/points.ts'
import { commonPractice, readNotes, readSecondHand, readStudy, standardAnatomy } from '../follow-up/provenance.ts'
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
      id: 'l1-skin',
      title: 'Skin flap',
      mind: 'two cuts down from the notches of the ear, below the canal',
      details: [],
      done: 'The skin flap over the vertical canal was cut and turned up.',
      notDone: 'The skin flap was not made: {because}.',
      because: [
        {
          value: 'The flap is as long as the canal and half of it again, so that the new opening can drain.',
          ...commonPractice,
        },
      ],
    },
    {
      id: 'l2-wall',
      title: 'Lateral wall',
      mind: 'parotid pushed down; both cuts end at the horizontal canal',
      details: [
        {
          id: 'parotid',
          asks: 'Parotid gland',
          kind: 'coded',
          answers: {
            'pushed-away': 'The parotid gland was pushed away whole.',
            injured: 'The parotid gland was injured.',
          },
        },
      ],
      done: 'The lateral wall of the vertical canal was freed and cut on both sides.',
      notDone: 'The lateral wall was not cut: {because}.',
      because: [
        {
          value:
            'The parotid gland covers the lower part of the canal; the facial nerve lies below and behind the horizontal one.',
          ...standardAnatomy,
        },
      ],
    },
    {
      id: 'l3-board',
      title: 'Board below the opening',
      mind: 'half of the wall stays, turned down without tension',
      details: [],
      done: 'What was left of the wall was turned down and sewn to the skin below the opening.',
      notDone: 'No board was made: {because}.',
      because: [{ value: 'A board of cartilage below the opening keeps hair and skin out of it.', ...commonPractice }],
    },
    { id: 'l4-opening', ...openingSeen },
    {
      id: 'l5-histology',
      title: 'Tissue',
      mind: 'the piece goes to the laboratory',
      details: [],
      done: 'The piece of canal was sent for histology.',
      notDone: 'The piece of canal was not sent: {because}.',
      because: [{ value: 'What looks like overgrowth may be a tumour.', ...commonPractice }],
    },
    {
      id: 'l6-closure',
      title: 'Closure',
      mind: 'lining to skin, without tension',
      details: [],
      done: 'The lining was sewn to the skin.',
      notDone: 'The wound was not closed: {because}.',
      because: [{ value: 'A gap between lining and skin narrows the new opening as it heals.', ...commonPractice }],
    },
    { id: 'l9-counts', ...countsMade },
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
