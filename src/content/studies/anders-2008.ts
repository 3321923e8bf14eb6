import { study } from '#core/evidence/study.ts'

export const anders2008 = study({
  id: 'anders-2008',
  year: 2008,
  doi: '10.2460/javma.233.4.580',
  design: 'prospective',
  seen: { where: 'copy of the PubMed abstract 18710312', known: 'read', strength: 'study', checked: '2026-11-25' },
  series: [
    {
      species: 'cat',
      procedure: 'ventral-bulla-osteotomy',
      unit: 'animal',
      animals: 17,
      followed: 'about 5 months (161 days) on average',
      outcomes: [
        {
          outcome: 'horner_any',
          events: 11,
          total: 17,
          basis: 'stated',
          confidence: 'high',
          followed: 'the time directly after surgery',
          remark: 'On the operated side; called short-term.',
        },
        {
          outcome: 'disease_recurrence_local',
          events: 1,
          total: 16,
          basis: 'stated',
          confidence: 'high',
          remark: 'Polyp grew again.',
        },
        {
          outcome: 'hearing_worsened_baer',
          events: 0,
          total: 15,
          basis: 'stated',
          confidence: 'medium',
          remark: '6 of 17 were deaf on the test before surgery; no cat changed; 15 were followed long-term.',
        },
      ],
    },
  ],
})
