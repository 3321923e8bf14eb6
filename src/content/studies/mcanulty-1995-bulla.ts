import { study } from '#core/evidence/study.ts'

export const mcanulty1995Bulla = study({
  id: 'mcanulty-1995-bulla',
  year: 1995,
  design: 'experimental',
  seen: { where: 'abstract at acnpsearch (Bologna)', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'vbo-experimental',
      unit: 'animal',
      animals: 12,
      touches: ['ventral-bulla-osteotomy'],
      followed: 'up to 6 weeks',
      outcomes: [
        {
          outcome: 'hearing_worsened_baer',
          events: 1,
          total: 12,
          basis: 'stated',
          confidence: 'high',
          pool: { use: 'no', because: 'experimental' },
          remark: '11 unchanged; 1 fell late, put down to new bone around the ossicles.',
        },
      ],
    },
  ],
})
