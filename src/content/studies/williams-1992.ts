import { study } from '#core/evidence/study.ts'

export const williams1992 = study({
  id: 'williams-1992',
  year: 1992,
  design: 'unknown',
  overlaps: [{ study: 'bacon-2003', likelihood: 'probable', because: 'the same hospital and a shared senior author' }],
  seen: { where: 'abstract at scilit.com', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'cat',
      procedure: 'teca-lbo',
      unit: 'ear',
      animals: 15,
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 11,
          total: 18,
          basis: 'stated',
          confidence: 'high',
          pool: { use: 'no', because: 'overlap' },
          remark: '7 called paralysis and 4 called neuropraxia. Same hospital and senior author as Bacon 2003.',
        },
        {
          outcome: 'facial_nerve_deficit_permanent',
          events: 7,
          total: 18,
          basis: 'interpreted',
          confidence: 'low',
          pool: { use: 'no', because: 'interpreted' },
          remark:
            'Only if paralysis means permanent and neuropraxia transient. Same hospital and senior author as Bacon 2003.',
        },
        {
          outcome: 'horner_any',
          events: 3,
          total: 18,
          basis: 'stated',
          confidence: 'high',
          pool: { use: 'no', because: 'overlap' },
          remark: 'Same hospital and senior author as Bacon 2003.',
        },
        {
          outcome: 'wound_infection_or_dehiscence',
          events: 1,
          total: 18,
          basis: 'stated',
          confidence: 'high',
          pool: { use: 'sensitivity', because: 'overlap' },
          remark: 'Breakdown of the wound. Same hospital and senior author as Bacon 2003.',
        },
      ],
    },
    {
      species: 'cat',
      procedure: 'teca-lbo',
      unit: 'animal',
      animals: 15,
      followed: '6 months',
      outcomes: [
        {
          outcome: 'disease_free_6mo',
          events: 11,
          total: 15,
          basis: 'stated',
          confidence: 'high',
          remark: 'Mostly tumours: 10 ears with adenocarcinoma, 4 with squamous carcinoma.',
        },
      ],
    },
  ],
})
