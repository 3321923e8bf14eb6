import { study } from '#core/evidence/study.ts'

export const janssens2017 = study({
  id: 'janssens-2017',
  year: 2017,
  doi: '10.1177/1098612X16660356',
  design: 'retrospective',
  seen: {
    where: 'abstract at mendeley.com and bvbvf1.bib-bvb.de',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'cat',
      procedure: 'traction-lateral',
      unit: 'animal',
      animals: 62,
      touches: ['traction'],
      followed: 'long-term, by telephone; the months are not stated',
      outcomes: [
        {
          outcome: 'horner_any',
          events: 7,
          total: 61,
          basis: 'reconstructed',
          confidence: 'low',
          pool: { use: 'sensitivity', because: 'reconstructed' },
          remark: '11.5 % printed for 62 cats; 7 of 61 is the nearest fraction, 7 of 62 is 11.3 %.',
        },
        {
          outcome: 'facial_nerve_deficit_any',
          events: 2,
          total: 62,
          basis: 'reconstructed',
          confidence: 'low',
          pool: { use: 'sensitivity', because: 'reconstructed' },
          remark: '3 % printed.',
        },
        {
          outcome: 'vestibular_any',
          events: 0,
          total: 62,
          basis: 'derived',
          confidence: 'medium',
          remark: 'Inner-ear inflammation was not seen.',
        },
        {
          outcome: 'disease_recurrence_local',
          percent: '14.3 % with experienced and 35 % with less experienced surgeons',
          basis: 'percent-only',
          confidence: 'medium',
          pool: { use: 'no', because: 'percent-only' },
          remark: 'The sizes of the two groups are not in the abstract.',
        },
      ],
    },
  ],
})
