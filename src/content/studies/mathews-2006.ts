import { study } from '#core/evidence/study.ts'

export const mathews2006 = study({
  id: 'mathews-2006',
  year: 2006,
  design: 'unknown',
  seen: { where: 'abstract at petcasefinder.com', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'mixed',
      procedure: 'subtotal-ablation',
      unit: 'animal',
      animals: 19,
      pool: { use: 'no', because: 'mixed-species' },
      remark: '18 dogs and 1 cat; whether the bulla was opened is not in the text read.',
      outcomes: [
        {
          outcome: 'pinna_or_canal_dermatitis',
          events: 8,
          total: 19,
          basis: 'stated',
          confidence: 'high',
          remark: 'Settled with medical care.',
        },
        {
          outcome: 'ear_carriage_normal',
          events: 19,
          total: 19,
          basis: 'stated',
          confidence: 'medium',
          remark: '"All" in the summary of the page.',
        },
      ],
    },
  ],
})
