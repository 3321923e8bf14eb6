import { study } from '#core/evidence/study.ts'

export const doyle2004 = study({
  id: 'doyle-2004',
  year: 2004,
  doi: '10.1186/2046-0481-57-1-22',
  design: 'unknown',
  seen: {
    where: 'abstract and methods at irishvetjournal.biomedcentral.com; page 3 of a copy',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'dog',
      procedure: 'teca-lbo',
      unit: 'animal',
      animals: 29,
      followed: 'at least 4 months, by examination or telephone',
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          events: 27,
          total: 29,
          basis: 'stated',
          confidence: 'high',
          remark: 'Excellent and improved; 37 operated, 29 followed.',
        },
      ],
    },
    {
      species: 'dog',
      procedure: 'lateral-wall-resection',
      unit: 'animal',
      animals: 8,
      followed: 'at least 4 months, by examination or telephone',
      outcomes: [
        {
          outcome: 'resolution_or_improved',
          events: 3,
          total: 8,
          basis: 'derived',
          confidence: 'medium',
          remark: 'Failed in 5 of the 8 followed; 9 operated, 1 lost.',
        },
      ],
    },
  ],
})
