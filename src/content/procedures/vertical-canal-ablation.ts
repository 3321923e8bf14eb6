import { procedure } from '#core/procedures/procedure.ts'
import { countsMade, openingSeen } from '../follow-up/points.ts'
import { commonPractice, readNotes, readSecondHand, standardAnatomy } from '../follow-up/provenance.ts'
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
      id: 'v1-skin',
      title: 'Skin',
      mind: 'T or circle round the opening',
      details: [],
      done: 'The skin was cut.',
      notDone: 'The skin was not cut: {because}.',
      because: [{ value: 'The opening of the canal goes with the vertical canal.', ...commonPractice }],
    },
    {
      id: 'v2-vertical-canal',
      title: 'Vertical canal free',
      mind: 'hug the cartilage; push the parotid away',
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
      done: 'The vertical canal was freed.',
      notDone: 'The vertical canal was not freed: {because}.',
      because: [
        { value: 'Away from the cartilage lie the gland, the facial nerve and the vessels.', ...standardAnatomy },
      ],
    },
    {
      id: 'v3-cut',
      title: 'Vertical canal out',
      mind: 'cut above the horizontal canal; boards up and down',
      details: [],
      done: 'The vertical canal was cut off above the horizontal one.',
      notDone: 'The vertical canal was not taken out: {because}.',
      because: [{ value: 'Two small boards of cartilage keep the new opening wide.', ...commonPractice }],
    },
    { id: 'v4-opening', ...openingSeen },
    {
      id: 'v5-histology',
      title: 'Tissue',
      mind: 'the canal goes to the laboratory',
      details: [],
      done: 'The canal was sent for histology.',
      notDone: 'The canal was not sent: {because}.',
      because: [{ value: 'What looks like overgrowth may be a tumour.', ...commonPractice }],
    },
    {
      id: 'v6-closure',
      title: 'Closure',
      mind: 'lining to skin, without tension; the rest in layers',
      details: [],
      done: 'The wound was closed in layers.',
      notDone: 'The wound was not closed: {because}.',
      because: [{ value: 'A gap between lining and skin narrows the new opening as it heals.', ...commonPractice }],
    },
    { id: 'v9-counts', ...countsMade },
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
