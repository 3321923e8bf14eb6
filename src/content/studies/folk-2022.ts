import { study } from '#core/evidence/study.ts'

export const folk2022 = study({
  id: 'folk-2022',
  year: 2022,
  doi: '10.2460/javma.21.10.0462',
  design: 'retrospective',
  remark: 'Two hospitals.',
  seen: {
    where: 'copy of the PubMed abstract 35333738 and a search page of avmajournals.avma.org',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'mixed',
      procedure: 'teca-lbo',
      unit: 'animal',
      animals: 120,
      pool: { use: 'no', because: 'mixed-species' },
      outcomes: [
        {
          outcome: 'revision_surgery',
          events: 13,
          total: 120,
          basis: 'stated',
          confidence: 'high',
          followed: 'at least 6 months',
          remark: 'Second operation for signs of infection; 107 dogs and 13 cats.',
        },
        {
          outcome: 'culture_positive_bulla',
          events: 95,
          total: 111,
          basis: 'stated',
          confidence: 'high',
          followed: 'during surgery',
          printed: 'Printed as 85.5 %; 95 of 111 is 85.6 %.',
          remark: 'Staphylococci most often.',
        },
      ],
    },
  ],
})
