import { study } from '#core/evidence/study.ts'

export const spivack2013 = study({
  id: 'spivack-2013',
  year: 2013,
  doi: '10.5326/jaaha-ms-5738',
  design: 'retrospective',
  seen: {
    where:
      'opening of the abstract at scite.ai (121 ears of 82 dogs, 12 ears of 11 cats, 2004–2010); the counts were cut off there',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'mixed',
      procedure: 'teca-lbo',
      unit: 'ear',
      animals: 93,
      outcomes: [
        {
          outcome: 'facial_nerve_deficit_any',
          events: 65,
          total: 133,
          basis: 'memory',
          confidence: 'low',
          known: 'remembered',
          where: 'recalled from the abstract; only its header was read',
          pool: { use: 'no', because: 'remembered' },
          remark: 'Recalled as 36 with weakness and 29 with paralysis of 133 ears.',
        },
      ],
    },
  ],
})
