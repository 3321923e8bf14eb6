import { study } from '#core/evidence/study.ts'

export const white1990 = study({
  id: 'white-1990',
  year: 1990,
  design: 'unknown',
  seen: { where: 'abstract at discovery.researcher.life', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'teca-lbo',
      unit: 'ear',
      animals: 71,
      outcomes: [
        {
          outcome: 'postop_complication_any',
          events: 29,
          total: 100,
          basis: 'from-percent',
          confidence: 'medium',
          remark: '29 % of 100 procedures; includes bleeding from a vein during surgery.',
        },
        {
          outcome: 'resolution_or_improved',
          events: 92,
          total: 100,
          basis: 'from-percent',
          confidence: 'medium',
          remark: '92 % "of cases": the base could be the 100 ears or the 71 dogs.',
        },
        {
          outcome: 'facial_nerve_deficit_any',
          events: 13,
          total: 100,
          basis: 'memory',
          confidence: 'low',
          known: 'remembered',
          where: 'usually quoted for this paper; not in its abstract',
          pool: { use: 'no', because: 'remembered' },
          remark: 'Not to be used until the paper itself is seen.',
        },
        {
          outcome: 'facial_nerve_deficit_permanent',
          events: 4,
          total: 100,
          basis: 'memory',
          confidence: 'low',
          known: 'remembered',
          where: 'usually quoted for this paper; not in its abstract',
          pool: { use: 'no', because: 'remembered' },
          remark: 'Not to be used until the paper itself is seen.',
        },
      ],
    },
  ],
})
