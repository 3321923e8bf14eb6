import { procedure } from '#core/procedures/procedure.ts'
import { countsMade } from '../follow-up/points.ts'
import { commonPractice, readStudy, standardAnatomy } from '../follow-up/provenance.ts'
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
      id: 's1-skin',
      title: 'Skin',
      mind: 'the flap of the ear and its base stay',
      details: [],
      done: 'The skin was cut.',
      notDone: 'The skin was not cut: {because}.',
      because: [{ value: 'The upper part of the canal is kept so that the ear can stand.', ...commonPractice }],
    },
    {
      id: 's2-canal',
      title: 'Diseased canal out',
      mind: 'hug the cartilage; nerve first',
      details: [
        {
          id: 'nerve',
          asks: 'Facial nerve',
          kind: 'coded',
          answers: {
            seen: 'The facial nerve was seen.',
            felt: 'The facial nerve was felt, not seen.',
            'not-found': 'The facial nerve was looked for and not found.',
          },
        },
      ],
      done: 'The diseased part of the canal was taken out down to the bony meatus.',
      notDone: 'The canal was not taken out: {because}.',
      because: [
        {
          value: 'The nerve leaves the skull behind the meatus and passes below the horizontal canal.',
          ...standardAnatomy,
        },
      ],
    },
    {
      id: 's3-bulla',
      title: 'Bulla opened',
      mind: 'from the side; rostral lies the vein',
      details: [],
      done: 'The bulla was opened and cleared.',
      notDone: 'The bulla was not opened: {because}.',
      because: [{ value: 'What is left in the bulla makes a tract later.', ...commonPractice }],
    },
    {
      id: 's4-sample',
      title: 'Samples',
      mind: 'on entry and after lavage; canal to histology',
      details: [],
      done: 'Samples were taken.',
      notDone: 'No sample was taken: {because}.',
      because: [{ value: 'Culture decides what follows.', ...commonPractice }],
    },
    {
      id: 's5-stump',
      title: 'Canal that stays',
      mind: 'closed as a blind pouch, its lining healthy',
      details: [],
      done: 'What stays of the canal was closed.',
      notDone: 'What stays of the canal was not closed: {because}.',
      because: [{ value: 'Lining that is closed in goes on making wax.', ...commonPractice }],
    },
    {
      id: 's6-closure',
      title: 'Closure',
      mind: 'layers, dead space',
      details: [],
      done: 'The wound was closed in layers.',
      notDone: 'The wound was not closed: {because}.',
      because: [{ value: 'Dead space fills with fluid.', ...commonPractice }],
    },
    { id: 's9-counts', ...countsMade },
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
