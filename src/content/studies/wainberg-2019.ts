import { study } from '#core/evidence/study.ts'

export const wainberg2019 = study({
  id: 'wainberg-2019',
  year: 2019,
  doi: '10.2460/javma.255.7.828',
  design: 'retrospective',
  remark: '25 hospitals, 2005–2016.',
  seen: {
    where: 'abstract at katalog.lib.cas.cz and ouci.dntb.gov.ua',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'cat',
      procedure: 'ventral-bulla-osteotomy',
      unit: 'procedure',
      animals: 282,
      remark:
        'The unit is the operation: 211 on one side, 14 staged, 64 on both sides in one session, which count once.',
      outcomes: [
        { outcome: 'horner_any', events: 197, total: 289, basis: 'stated', confidence: 'high' },
        {
          outcome: 'horner_permanent',
          events: 56,
          total: 289,
          basis: 'from-percent',
          confidence: 'medium',
          remark:
            '19.4 %. The percentage called permanent refers to all 289: only that base reproduces the decimals. Includes cats with the sign before surgery.',
        },
        {
          outcome: 'vestibular_any',
          events: 87,
          total: 289,
          basis: 'stated',
          confidence: 'high',
          remark: 'Head tilt.',
        },
        {
          outcome: 'vestibular_permanent',
          events: 64,
          total: 289,
          basis: 'from-percent',
          confidence: 'medium',
          remark:
            'Head tilt, 22.1 %. The percentage called permanent refers to all 289: only that base reproduces the decimals. Includes cats with the sign before surgery.',
        },
        { outcome: 'facial_nerve_deficit_any', events: 39, total: 289, basis: 'stated', confidence: 'high' },
        {
          outcome: 'facial_nerve_deficit_permanent',
          events: 23,
          total: 289,
          basis: 'from-percent',
          confidence: 'medium',
          remark:
            '8.0 %. The percentage called permanent refers to all 289: only that base reproduces the decimals. Includes cats with the sign before surgery.',
        },
        { outcome: 'disease_recurrence_local', events: 18, total: 289, basis: 'stated', confidence: 'high' },
      ],
    },
    {
      species: 'cat',
      procedure: 'ventral-bulla-osteotomy',
      unit: 'animal',
      animals: 282,
      followed: 'around surgery',
      outcomes: [
        {
          outcome: 'respiratory_complication',
          events: 50,
          total: 282,
          basis: 'derived',
          confidence: 'medium',
          remark: 'Sum of 18 of 211, 2 of 7 and 30 of 64 cats.',
        },
        {
          outcome: 'respiratory_complication',
          events: 18,
          total: 211,
          basis: 'stated',
          confidence: 'high',
          subgroup: 'one side',
          pool: { use: 'no', because: 'subgroup' },
        },
        {
          outcome: 'respiratory_complication',
          events: 2,
          total: 7,
          basis: 'stated',
          confidence: 'high',
          subgroup: 'both sides, staged',
          pool: { use: 'no', because: 'subgroup' },
        },
        {
          outcome: 'respiratory_complication',
          events: 30,
          total: 64,
          basis: 'stated',
          confidence: 'high',
          subgroup: 'both sides in one session',
          pool: { use: 'no', because: 'subgroup' },
          remark: 'Severe breathing trouble and death from surgery were also more likely in this group.',
        },
      ],
    },
  ],
})
