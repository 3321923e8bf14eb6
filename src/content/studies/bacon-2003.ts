import { study } from '#core/evidence/study.ts'

export const bacon2003 = study({
  id: 'bacon-2003',
  year: 2003,
  doi: '10.1111/j.1748-5827.2003.tb00101.x',
  design: 'retrospective',
  overlaps: [
    { study: 'williams-1992', likelihood: 'probable', because: 'the same hospital and a shared senior author' },
  ],
  seen: { where: 'PubMed abstract 14582656', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'cat',
      procedure: 'teca-lbo',
      unit: 'ear',
      animals: 44,
      followed: 'long-term; the months are not stated',
      remark:
        'The abstract says ablation of the canal; 52 procedures in 44 cats. What was not permanent passed within weeks to months.',
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 29,
          total: 52,
          basis: 'from-percent',
          confidence: 'medium',
          remark: '56 % of 52 procedures.',
        },
        {
          outcome: 'horner_any',
          events: 22,
          total: 52,
          basis: 'from-percent',
          confidence: 'medium',
          remark: '42 % of 52 procedures.',
        },
        {
          outcome: 'facial_nerve_deficit_permanent',
          events: 8,
          total: 52,
          basis: 'reconstructed',
          confidence: 'low',
          reading: 'B: a share of those affected',
          pool: { use: 'sensitivity', because: 'two-readings' },
          printed:
            'Printed as a percentage "of cases" without its base. 28 % of the 29 affected is 8 and fits the stated 52 ears.',
        },
        {
          outcome: 'facial_nerve_deficit_permanent',
          events: 14,
          total: 50,
          basis: 'reconstructed',
          confidence: 'low',
          reading: 'A: a share of all ears',
          pool: { use: 'no', because: 'two-readings' },
          printed:
            'Printed as a percentage "of cases" without its base. 28 % of all ears needs 50 ears, as do the other three percentages; the usual reading in textbooks.',
        },
        {
          outcome: 'horner_permanent',
          events: 3,
          total: 52,
          basis: 'reconstructed',
          confidence: 'low',
          reading: 'B: a share of those affected',
          pool: { use: 'sensitivity', because: 'two-readings' },
          printed:
            'Printed as a percentage "of cases" without its base. 14 % of the 22 affected is 3 and fits the stated 52 ears.',
        },
        {
          outcome: 'horner_permanent',
          events: 7,
          total: 50,
          basis: 'reconstructed',
          confidence: 'low',
          reading: 'A: a share of all ears',
          pool: { use: 'no', because: 'two-readings' },
          printed:
            'Printed as a percentage "of cases" without its base. 14 % of all ears needs 50 ears; the usual reading in textbooks.',
        },
      ],
    },
  ],
})
