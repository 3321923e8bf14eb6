import { procedure } from '#core/procedures/procedure.ts'
import { countsAgree, throatPackOut } from '../follow-up/points.ts'
import { commonPractice, readNotes, readSecondHand, readStudy, standardAnatomy } from '../follow-up/provenance.ts'
import { faceAndEyeLooks, wholeYear } from '../follow-up/visits.ts'

const wainberg = { sources: ['wainberg-2019'], ...readStudy } as const

/** Opening and clearing of the bulla from below; the canal stays. */
export const ventralBullaOsteotomy = procedure({
  id: 'ventral-bulla-osteotomy',
  name: 'Ventral bulla osteotomy',
  species: ['dog', 'cat'],
  indications: [
    {
      value: 'Disease of the middle ear with a healthy canal.',
      sources: ['house-2015-wsava'],
      ...readNotes,
    },
    {
      value: 'A polyp of a cat with a changed bulla, pulled out in part, or grown again.',
      sources: ['house-2015-wsava', 'bsava-head-neck-thoracic'],
      where: 'manual page 80',
      ...readSecondHand,
    },
    {
      value: 'Disease again after the canal was removed, when its lining is out but the bulla was not cleared.',
      sources: ['house-2015-wsava', 'bsava-head-neck-thoracic'],
      where: 'manual page 78',
      ...readSecondHand,
    },
  ],
  against: [
    { value: 'Both sides in one session in a cat: breathing trouble in 30 of 64 against 18 of 211.', ...wainberg },
    { value: 'A diseased canal: it stays behind and goes on.', ...commonPractice },
  ],
  checkpoints: [
    {
      id: 'v1-skin',
      title: 'Skin',
      mind: 'beside the midline, over the bulla; side spoken again on the back',
      details: [
        {
          id: 'side',
          asks: 'Side spoken on the back',
          kind: 'coded',
          answers: {
            spoken: 'The side was spoken again with the animal on its back.',
            'not-spoken': 'The side was not spoken again.',
          },
        },
      ],
      done: 'The skin was cut over the bulla.',
      notDone: 'The skin cut was not made: {because}.',
      because: [{ value: 'On the back, left and right change places for the eye.', ...commonPractice }],
    },
    {
      id: 'v2-approach',
      title: 'Down to the bulla',
      mind: 'digastric aside; hypoglossal nerve medial and deep',
      details: [
        {
          id: 'hypoglossal',
          asks: 'Hypoglossal nerve',
          kind: 'coded',
          answers: {
            seen: 'The hypoglossal nerve was seen and kept.',
            'not-seen': 'The hypoglossal nerve was not seen.',
            injured: 'The hypoglossal nerve was injured.',
          },
        },
      ],
      done: 'The bulla was reached from below.',
      notDone: 'The bulla was not reached: {because}.',
      because: [
        {
          value: 'The hypoglossal nerve runs ventromedial to the bulla, medial to the digastric muscle.',
          ...standardAnatomy,
        },
      ],
    },
    {
      id: 'v3-bulla',
      title: 'Bulla opened',
      mind: 'a cat has two rooms: open the second through the septum, laterally',
      details: [
        {
          id: 'rooms',
          asks: 'Rooms opened',
          kind: 'coded',
          answers: {
            'both-rooms': 'Both rooms of the bulla were opened through the septum.',
            'one-room': 'One room of the bulla was opened.',
          },
        },
        {
          id: 'content',
          asks: 'Bulla held',
          kind: 'coded',
          answers: {
            polyp: 'The bulla held a polyp.',
            fluid: 'The bulla held fluid.',
            pus: 'The bulla held pus.',
            keratin: 'The bulla held layered keratin.',
            mass: 'The bulla held a mass.',
            dry: 'The bulla was dry.',
          },
        },
      ],
      done: 'The bulla was opened from below.',
      notDone: 'The bulla was not opened: {because}.',
      because: [{ value: 'The bulla of a cat is split by a septum; a dog has one room.', ...standardAnatomy }],
    },
    {
      id: 'v4-sample',
      title: 'Samples',
      mind: 'culture on entry; everything removed to histology',
      details: [
        {
          id: 'taken',
          asks: 'Sampled',
          kind: 'coded',
          answers: {
            'culture-and-histology': 'Samples for culture and histology were taken.',
            culture: 'A sample for culture was taken.',
            histology: 'Tissue for histology was taken.',
          },
        },
      ],
      done: 'Samples were taken.',
      notDone: 'No sample was taken: {because}.',
      because: [
        { value: 'In cats a tumour is a frequent reason; tissue decides.', sources: ['bacon-2003'], ...readStudy },
      ],
    },
    {
      id: 'v5-curettage',
      title: 'Lining',
      mind: 'dorsomedial side spared: sympathetic fibres and windows',
      details: [
        {
          id: 'cleared',
          asks: 'Cleared',
          kind: 'coded',
          answers: {
            complete: 'The lining was taken out completely.',
            incomplete: 'Some lining stayed.',
          },
        },
      ],
      done: 'The lining was taken out.',
      notDone: 'The lining was not taken out: {because}.',
      because: [
        { value: 'Horner’s syndrome followed 68.2 % of operations in 282 cats, lasting in 19.4 %.', ...wainberg },
      ],
    },
    {
      id: 'v6-closure',
      title: 'Lavage, drain or none, closure',
      mind: 'airway watched from here on',
      details: [
        {
          id: 'drain',
          asks: 'Drain',
          kind: 'coded',
          answers: { none: 'No drain was placed.', 'own-hole': 'A drain was led out through a hole of its own.' },
        },
      ],
      done: 'The bulla was washed out and the wound closed in layers.',
      notDone: 'The wound was not closed: {because}.',
      because: [{ value: 'Surgery of the bulla swells the throat.', ...commonPractice }],
    },
    {
      id: 'v7-counts',
      title: 'Counts and throat pack',
      mind: 'counts agree; throat pack out; specimens labelled',
      details: [countsAgree, throatPackOut],
      done: 'The counts were made.',
      notDone: 'The counts were not made: {because}.',
      because: [{ value: 'A forgotten pack closes the airway.', ...commonPractice }],
    },
  ],
  checkpointsComplete: { kind: 'unknown', because: 'The references describe the approach from below only in outline.' },
  risks: [
    { outcome: 'respiratory_complication', shows: 'first-days' },
    { outcome: 'perioperative_death', shows: 'first-days' },
    { outcome: 'horner_any', shows: 'first-days' },
    { outcome: 'horner_permanent', shows: 'late' },
    { outcome: 'vestibular_any', shows: 'first-days' },
    { outcome: 'vestibular_permanent', shows: 'late' },
    { outcome: 'facial_nerve_deficit_any', shows: 'first-days' },
    { outcome: 'facial_nerve_deficit_permanent', shows: 'late' },
    { outcome: 'hypoglossal', shows: 'first-days' },
    { outcome: 'corneal_ulcer', shows: 'first-days' },
    { outcome: 'wound_infection_or_dehiscence', shows: 'first-weeks' },
    { outcome: 'disease_recurrence_local', shows: 'late' },
  ],
  consentItems: [
    'which-ear',
    'what-is-removed',
    'alternatives-offered',
    'no-treatment-offered',
    'risks-with-numbers',
    'face-and-eye',
    'hearing',
    'swallowing-and-breathing',
    'regrowth',
    'who-operates',
    'may-extend',
    'resuscitation',
    'ceiling-of-costs',
    'tissue-to-laboratory',
    'photographs',
  ],
  followUp: {
    steps: wholeYear,
    faceLooks: { kind: 'known', fact: faceAndEyeLooks },
    plans: ['other-ear'],
  },
})
