import { study } from '#core/evidence/study.ts'

export const mcanulty1995Ablation = study({
  id: 'mcanulty-1995-ablation',
  year: 1995,
  doi: '10.1111/j.1532-950x.1995.tb01285.x',
  design: 'experimental',
  seen: { where: 'abstract at scilit.com', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'teca-lbo-experimental',
      unit: 'animal',
      animals: 13,
      touches: ['teca-lbo'],
      followed: 'up to 6 weeks',
      outcomes: [
        {
          outcome: 'hearing_air_baer_absent',
          events: 11,
          total: 13,
          basis: 'stated',
          confidence: 'high',
          pool: { use: 'no', because: 'experimental' },
          remark: 'The two that still answered had kept their ear drum. Not what an owner notices.',
        },
      ],
    },
  ],
})
