import { study } from '#core/evidence/study.ts'

export const smeak1996 = study({
  id: 'smeak-1996',
  year: 1996,
  doi: '10.2460/javma.1996.209.05.937',
  design: 'retrospective',
  remark: 'The case period is printed as 1986–1994 on one page and 1988–1994 on another.',
  seen: {
    where: 'abstract at acnpsearch (Bologna) and in the mendeley.com catalogue',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'dog',
      procedure: 'teca-lbo',
      unit: 'animal',
      animals: 94,
      outcomes: [
        {
          outcome: 'deep_recurrence',
          events: 9,
          total: 94,
          basis: 'stated',
          confidence: 'high',
          remark: 'Renewed middle-ear infection; the base series is 94 dogs with 142 ears.',
        },
      ],
    },
    {
      species: 'dog',
      procedure: 'vbo-after-teca-lbo',
      unit: 'animal',
      animals: 7,
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          events: 1,
          total: 7,
          basis: 'stated',
          confidence: 'high',
          subgroup: 'after the first exploration',
          pool: { use: 'no', because: 'subgroup' },
        },
        {
          outcome: 'resolution_or_improved',
          events: 6,
          total: 7,
          basis: 'derived',
          confidence: 'medium',
          remark:
            'After up to two explorations: 1 after the first, 5 more after a second that removed lining left behind; 1 put to sleep.',
        },
      ],
    },
    {
      species: 'dog',
      procedure: 'antibiotics-after-teca-lbo',
      unit: 'animal',
      animals: 8,
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          events: 1,
          total: 8,
          basis: 'stated',
          confidence: 'high',
          remark: 'Failed in 7 of 8.',
        },
      ],
    },
  ],
})
