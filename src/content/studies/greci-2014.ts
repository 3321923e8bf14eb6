import { study } from '#core/evidence/study.ts'

export const greci2014 = study({
  id: 'greci-2014',
  year: 2014,
  doi: '10.1177/1098612X13516620',
  design: 'unknown',
  seen: {
    where: 'abstract at discovery.researcher.life and a copy of PubMed 24366845',
    known: 'read',
    strength: 'study',
    checked: '2026-11-25',
  },
  series: [
    {
      species: 'cat',
      procedure: 'traction-endoscopic',
      unit: 'animal',
      animals: 37,
      touches: ['traction'],
      followed: '19 months on average',
      outcomes: [
        {
          outcome: 'horner_any',
          events: 3,
          total: 37,
          basis: 'stated',
          confidence: 'high',
          remark: 'All passed within a few weeks.',
        },
        {
          outcome: 'horner_permanent',
          events: 0,
          total: 37,
          basis: 'derived',
          confidence: 'medium',
          remark: 'From "within a few weeks".',
        },
        {
          outcome: 'disease_recurrence_local',
          events: 5,
          total: 37,
          basis: 'stated',
          confidence: 'high',
          remark: 'Printed as 13.5 %.',
        },
        {
          outcome: 'resolution_or_improved',
          events: 35,
          total: 37,
          basis: 'derived',
          confidence: 'medium',
          remark: '94 %, and two cats with a poor outcome.',
        },
      ],
    },
  ],
})
