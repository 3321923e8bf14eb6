import { study } from '#core/evidence/study.ts'

export const imai2019 = study({
  id: 'imai-2019',
  year: 2019,
  doi: '10.1111/vde.12707',
  design: 'unknown',
  seen: { where: 'abstract at pubag.nal.usda.gov', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'dog',
      procedure: 'cholesteatoma-endoscopic-clearing',
      unit: 'ear',
      animals: 11,
      followed: 'about 28 months on average',
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          events: 9,
          total: 13,
          basis: 'stated',
          confidence: 'high',
          remark: 'A comparison without surgery; lifelong flushing. Mean follow-up 27.9 months.',
        },
      ],
    },
  ],
})
