import { study } from '#core/evidence/study.ts'

export const smeak1986 = study({
  id: 'smeak-1986',
  year: 1986,
  design: 'retrospective',
  seen: { where: 'abstract at discovery.researcher.life', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'mixed',
      procedure: 'teca-alone',
      unit: 'ear',
      animals: 31,
      touches: ['teca-lbo'],
      pool: { use: 'no', because: 'mixed-species' },
      followed: '1 month to 4 years, 3.4 years on average, for those with a draining tract',
      remark: '28 dogs and 3 cats. The bulla was not opened, so not comparable with an ablation that opens it.',
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 14,
          total: 39,
          basis: 'stated',
          confidence: 'high',
          remark: 'Printed as 36 %; 14 ears are named as the base of the transient figure.',
        },
        {
          outcome: 'facial_nerve_deficit_temporary',
          events: 9,
          total: 39,
          basis: 'stated',
          confidence: 'high',
          remark: '9 of the 14 affected ears, most within two weeks.',
        },
        {
          outcome: 'facial_nerve_deficit_permanent',
          events: 5,
          total: 39,
          basis: 'derived',
          confidence: 'medium',
          remark:
            '14 affected less 9 transient; assumes that every other deficit was followed long enough to be called permanent.',
        },
        {
          outcome: 'wound_infection_or_dehiscence',
          events: 16,
          total: 39,
          basis: 'from-percent',
          confidence: 'medium',
          remark: '41 % of 39; wound infection.',
        },
        {
          outcome: 'postop_complication_any',
          events: 32,
          total: 39,
          basis: 'from-percent',
          confidence: 'medium',
          remark: '82 % of 39.',
        },
      ],
    },
    {
      species: 'dog',
      procedure: 'teca-alone',
      unit: 'animal',
      followed: 'more than 5 months',
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          events: 15,
          total: 25,
          basis: 'stated',
          confidence: 'high',
          pool: { use: 'sensitivity', because: 'chosen-cases' },
          remark:
            '8 of 15 with overgrown, narrowed canals and 7 of 10 after a failed lateral resection; tumours left out.',
        },
      ],
    },
  ],
})
